package loopwright.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loopwright.action.UserFault;
import loopwright.scoring.CourseCard;
import loopwright.scoring.CourseCard.HoleCard;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.RoundRecord;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;

/** Which holes are asked for, in the order of play, and what is known of them beforehand. */
record RoundRequest(List<Integer> numbers, Optional<CourseCard> card, boolean named) {

    RoundRequest(int startHole, int holes, @Nullable String pars, Optional<CourseCard> course) {
        this(numbers(startHole, holes, course), course.or(() -> typed(startHole, holes, pars)), course.isPresent());
    }

    /** The round as it was typed. */
    RoundRecord round(LocalDate day, @Nullable String format, List<HoleRecord> holes) {
        return new RoundRecord(
                day.toString(),
                Optional.of(day.toString()),
                card.filter(c -> named).map(CourseCard::course),
                card.filter(c -> named).map(CourseCard::tees),
                Optional.ofNullable(format),
                false,
                false,
                holes);
    }

    /** Round and round: an eighteen begun at 10 ends at 9. */
    private static List<Integer> numbers(int startHole, int holes, Optional<CourseCard> course) {
        if (holes < 1 || holes > 36) {
            throw new UserFault("A round has 1 to 36 holes, not " + holes + ".");
        }
        List<Integer> cycle = course.map(
                        c -> c.holes().stream().map(HoleCard::number).toList())
                .orElseGet(() ->
                        IntStream.rangeClosed(1, Math.max(18, holes)).boxed().toList());
        int first = cycle.indexOf(startHole);
        if (first < 0) {
            throw new UserFault("There is no hole " + startHole + " to start from; holes are " + cycle.get(0) + " to "
                    + cycle.get(cycle.size() - 1) + ".");
        }
        if (holes > cycle.size()) {
            throw new UserFault("The course has " + cycle.size() + " holes, not " + holes + "; add --holes.");
        }
        return IntStream.range(0, holes)
                .mapToObj(i -> cycle.get((first + i) % cycle.size()))
                .toList();
    }

    private static Optional<CourseCard> typed(int startHole, int holes, @Nullable String pars) {
        if (pars == null) {
            return Optional.empty();
        }
        if (!pars.matches("[3-6]{" + holes + "}")) {
            throw new UserFault(
                    "--pars takes " + holes + " digits from 3 to 6, one for each hole in the order of play.");
        }
        List<Integer> numbers = numbers(startHole, holes, Optional.empty());
        List<HoleCard> cards = new ArrayList<>();
        for (int i = 0; i < holes; i++) {
            cards.add(new HoleCard(numbers.get(i), pars.charAt(i) - '0', Distance.ofMetres(0)));
        }
        return Optional.of(new CourseCard("", "", cards));
    }
}
