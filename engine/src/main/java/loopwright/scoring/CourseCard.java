package loopwright.scoring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.course.Course;
import loopwright.course.TeeSet;
import loopwright.units.Distance;

/** What a scorecard prints of a set of tees: par and length of each hole, the length along the hole. */
public record CourseCard(String course, String tees, List<HoleCard> holes) {
    public CourseCard {
        holes = List.copyOf(holes);
    }

    /** One hole of the card. */
    public record HoleCard(int number, int par, Distance length) {}

    public static CourseCard of(Course course, TeeSet tees) {
        List<HoleCard> holes = course.holes().stream()
                .map(h -> new HoleCard(h.number(), h.par(), Distance.ofMetres(course.lengthMetres(h, tees))))
                .toList();
        return new CourseCard(course.name(), tees.name(), holes);
    }

    public Optional<HoleCard> findHole(int number) {
        return holes.stream().filter(h -> h.number() == number).findFirst();
    }

    /** The round with par, length, course and tees from the card where the record itself does not say. */
    public RoundRecord complete(RoundRecord round) {
        return new RoundRecord(
                round.name(),
                round.date(),
                round.course().or(() -> Optional.of(course)),
                round.tees().or(() -> Optional.of(tees)),
                round.format(),
                round.team(),
                round.lesson(),
                round.holes().stream().map(this::complete).toList());
    }

    private HoleRecord complete(HoleRecord hole) {
        Optional<HoleCard> card = findHole(hole.number());
        if (card.isEmpty()) {
            return hole;
        }
        return new HoleRecord(
                hole.number(),
                hole.par().isPresent() ? hole.par() : OptionalInt.of(card.get().par()),
                hole.length().or(() -> Optional.of(card.get().length())),
                hole.writtenScore(),
                hole.end(),
                hole.marks(),
                hole.counts(),
                hole.shots(),
                hole.conceded());
    }
}
