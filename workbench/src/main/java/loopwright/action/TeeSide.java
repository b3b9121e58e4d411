package loopwright.action;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeeSet;
import loopwright.numerics.Watch;
import loopwright.player.Mishit;
import loopwright.player.Player;
import loopwright.player.PlayerProfile;
import loopwright.player.ShotPattern;

/** One player's side of a comparison of tees. */
record TeeSide(
        String player, int holes, PublishedLength published, List<TeesAnswer.Row> rows, TeesAnswer.Choice choice) {
    /**
     * Share of the approaches into par 4s that are to be a middle iron or less: one share for every player, set so that the
     * rows of {@link PublishedLength} are met best ({@code docs/validation.md}).
     */
    static final double ENOUGH = 0.8;

    private static final int PUBLISHED_HOLES = 18;

    TeeSide {
        rows = List.copyOf(rows);
    }

    List<TeesAnswer.Row> candidates() {
        return rows.stream().filter(TeesAnswer.Row::isCandidate).toList();
    }

    static TeeSide of(TeesRequest request, Course course, PlayerProfile profile, Watch watch) {
        PlanRequest round = request.round();
        List<Hole> holes = HoleNumberList.startingAt(round.startHole(), HoleNumberList.read(round.holes(), course));
        round.counting().checkTarget(round.target(), holes.size());
        PublishedLength published = PublishedLength.forDrive(driveMetres(profile.player()));
        List<TeesAnswer.Row> rows = request.byDistance()
                ? lengths(course, holes)
                : new TeeComparison(request, course, profile, watch).rows();
        TeesAnswer.Choice choice =
                request.byDistance() ? byDistance(rows, published, holes.size()) : choice(rows, profile.player());
        return new TeeSide(profile.player().name(), holes.size(), published, rows, choice);
    }

    /** The average drive, mishits included: what his longest swing goes. */
    static double driveMetres(Player player) {
        ShotPattern p = player.swings().get(0).pattern();
        double mean = (1 - p.mishitRate()) * p.totalMetres();
        for (Mishit m : p.mishits()) {
            mean += m.rate() * (m.carryFactor() * p.carryMetres() + Math.min(1, m.carryFactor()) * p.runMetres());
        }
        return mean;
    }

    private static List<TeesAnswer.Row> lengths(Course course, List<Hole> holes) {
        return course.teeSets().stream()
                .map(set -> new TeesAnswer.Row(set.name(), "", false, length(course, holes, set), Optional.empty()))
                .toList();
    }

    private static double length(Course course, List<Hole> holes, TeeSet set) {
        return holes.stream().mapToDouble(h -> course.lengthMetres(h, set)).sum();
    }

    private static TeesAnswer.Choice byDistance(List<TeesAnswer.Row> rows, PublishedLength published, int holes) {
        double middle = (published.shortestMetres() + published.longestMetres()) / 2 * holes / PUBLISHED_HOLES;
        TeesAnswer.Row best = rows.get(0);
        for (TeesAnswer.Row row : rows) {
            if (Math.abs(row.lengthMetres() - middle) < Math.abs(best.lengthMetres() - middle)) {
                best = row;
            }
        }
        return new TeesAnswer.Choice(best.name(), "its length lies nearest to the published one; nothing was solved");
    }

    private static TeesAnswer.Choice choice(List<TeesAnswer.Row> rows, Player player) {
        List<TeesAnswer.Row> candidates =
                rows.stream().filter(TeesAnswer.Row::isCandidate).toList();
        TeesAnswer.Row shortest = candidates.get(candidates.size() - 1);
        for (TeesAnswer.Row row : candidates) {
            TeesAnswer.Play play = row.play().orElseThrow();
            if (play.carriesBeyond().isEmpty() && play.approaches().middleIronOrLess() >= ENOUGH) {
                return new TeesAnswer.Choice(
                        row.name(),
                        String.format(
                                Locale.ROOT,
                                "the longest set without a carry beyond %s that leaves a middle iron or less into most"
                                        + " par 4s: after %.0f of 100 tee shots, mishits included",
                                player.name(),
                                100 * play.approaches().middleIronOrLess()));
            }
        }
        TeesAnswer.Play play = shortest.play().orElseThrow();
        return new TeesAnswer.Choice(
                shortest.name(),
                String.format(
                        Locale.ROOT,
                        "the shortest set; even from here a middle iron or less is left into the par 4s after only %.0f"
                                + " of 100 tee shots%s",
                        100 * play.approaches().middleIronOrLess(),
                        play.carriesBeyond().isEmpty() ? "" : ", and a forced carry stays too long"));
    }
}
