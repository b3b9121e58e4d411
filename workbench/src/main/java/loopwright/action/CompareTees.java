package loopwright.action;

import java.util.List;
import java.util.Optional;
import loopwright.course.Course;
import loopwright.course.TeePlan;
import loopwright.numerics.Watch;
import loopwright.player.PlayerProfile;

/**
 * Sets a player's tees side by side. Every hole is solved once from every place that any of the sets has; sets made hole by
 * hole cost nothing more.
 *
 * <p>Recommended is the longest set that leaves a middle iron or less into {@link TeeSide#ENOUGH} of the par 4s, mishits included,
 * and has no forced carry beyond the player; where none does, the shortest. That the right tees let most par 4s be reached
 * with a middle or short iron is common practice, no source; the share is set on the published lengths.
 */
public final class CompareTees {
    private final CourseFiles courses;
    private final PlayerFiles players;

    public CompareTees(CourseFiles courses, PlayerFiles players) {
        this.courses = courses;
        this.players = players;
    }

    public TeesAnswer compare(TeesRequest request, Watch watch) {
        Course course = withMixedSets(courses.read(request.round().course()).course(), request.mixed());
        PlayerProfile player = players.read(request.round().player());
        Optional<PlayerProfile> other =
                request.partner().map(players::read); // a wrong file is told before the long work
        TeeSide own = TeeSide.of(request, course, player, watch);
        Optional<TeesAnswer.Partner> partner =
                other.map(p -> pair(own, TeeSide.of(request.forPartner(), course, p, watch), request.byDistance()));
        return new TeesAnswer(
                course.name(),
                own.player(),
                own.holes(),
                request.round().counting().words(request.round().target()),
                own.published(),
                own.rows(),
                own.choice(),
                partner,
                Today.of(request.round().today(), player));
    }

    private static Course withMixedSets(Course course, List<String> mixed) {
        Course out = course;
        for (String text : mixed) {
            TeePlan plan = MixedTees.read(text, out);
            if (out.findTeeSet(plan.name()).isPresent()) {
                throw new UserFault("--mixed " + text
                        + " takes a name that the course has; choose another, for example \"" + plan.name() + "2\".");
            }
            out = plan.addedTo(out);
        }
        return out;
    }

    /** One of the two plays his recommended set; the other the one that gives him the most alike clubs. */
    private static TeesAnswer.Partner pair(TeeSide own, TeeSide other, boolean byDistance) {
        String pairOwn = own.choice().set();
        String pairOther = other.choice().set();
        double least = Double.POSITIVE_INFINITY;
        for (TeesAnswer.Row a : own.candidates()) {
            for (TeesAnswer.Row b : other.candidates()) {
                boolean known = a.name().equals(own.choice().set())
                        || b.name().equals(other.choice().set());
                double difference = byDistance ? ratioDifference(own, a, other, b) : clubDifference(a, b);
                if (known && difference < least) {
                    least = difference;
                    pairOwn = a.name();
                    pairOther = b.name();
                }
            }
        }
        return new TeesAnswer.Partner(
                other.player(), other.published(), other.rows(), other.choice(), pairOwn, pairOther, least);
    }

    private static double clubDifference(TeesAnswer.Row a, TeesAnswer.Row b) {
        return a.play()
                .orElseThrow()
                .approaches()
                .differenceTo(b.play().orElseThrow().approaches());
    }

    private static double ratioDifference(TeeSide own, TeesAnswer.Row a, TeeSide other, TeesAnswer.Row b) {
        return Math.abs(Math.log(a.lengthMetres() / own.published().driveMetres())
                - Math.log(b.lengthMetres() / other.published().driveMetres()));
    }
}
