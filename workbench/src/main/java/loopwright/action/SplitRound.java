package loopwright.action;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loopwright.geo.LocalFrame;
import loopwright.numerics.Watch;
import loopwright.scoring.Attribution;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.ShotAttribution;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.PolicyEvaluation;

/**
 * Divides the strokes of a kept round into decision, execution and luck: the holes whose strokes have places are solved for
 * the player as he was known before the round, on the usual day, to the hole locations of the day where they are kept.
 */
public final class SplitRound {
    private static final long SEED = 1;

    private final Workroom room;
    private final CourseFiles courses;
    private final PlayerFiles players;

    public SplitRound(Workroom room, CourseFiles courses, PlayerFiles players) {
        this.room = room;
        this.courses = courses;
        this.players = players;
    }

    /** The strokes of the holes that can be divided, in the order of play. */
    public List<ShotAttribution> split(
            String player, KeepRounds.Kept round, Shelf.Entry course, boolean inferAims, Watch watch) {
        Map<Integer, HoleRecord> holes = round.record().holes().stream()
                .filter(h -> !h.shots().isEmpty()
                        && h.shots().stream().allMatch(s -> s.place().isPresent()))
                .collect(Collectors.toMap(HoleRecord::number, h -> h));
        if (holes.isEmpty()) {
            return List.of();
        }
        RoundSetup setup = RoundSetup.read(request(player, round, course, holes), PlanDay.USUAL, courses, players);
        LocalFrame frame = new LocalFrame(setup.course().origin());
        List<List<ShotAttribution>> split = Cores.all(
                IntStream.range(0, setup.holes().size()).boxed().toList(),
                i -> {
                    MeanSolution solution = MeanSolver.solve(
                            setup.problem(i, setup.greens().of(setup.holes().get(i))), watch.withoutProgress());
                    PolicyEvaluation evaluation = solution.evaluate(watch.withoutProgress());
                    HoleRecord hole = Objects.requireNonNull(
                            holes.get(setup.holes().get(i).number()));
                    return new Attribution(solution, evaluation, frame, inferAims).of(hole);
                },
                watch);
        List<ShotAttribution> out = new ArrayList<>();
        for (HoleRecord hole : round.record().holes()) {
            split.stream()
                    .filter(s -> !s.isEmpty() && s.get(0).hole() == hole.number())
                    .forEach(out::addAll);
        }
        return out;
    }

    private PlanRequest request(
            String player, KeepRounds.Kept round, Shelf.Entry course, Map<Integer, HoleRecord> holes) {
        String day = round.entry().day().toString();
        List<String> locations = room.store().listHoleLocations(course.id(), day).entrySet().stream()
                .map(e -> e.getKey() + ":" + e.getValue())
                .toList();
        return PlanRequest.usual(
                room.courseFile(course.id(), course.version()),
                room.playerFile(player, versionBefore(player, round)),
                round.entry().tees().isEmpty() ? "middle" : round.entry().tees(),
                0,
                holes.keySet().stream().sorted().map(String::valueOf).collect(Collectors.joining(",")),
                locations,
                List.of(),
                List.of(),
                SEED);
    }

    /** The newest version made before the day of the round; the first if there was none. */
    private int versionBefore(String player, KeepRounds.Kept round) {
        var day = round.entry().day().atStartOfDay().toInstant(ZoneOffset.UTC);
        return room.store().players().listVersions(player).stream()
                .filter(v -> v.at().isBefore(day))
                .mapToInt(Shelf.Entry::version)
                .max()
                .orElse(1);
    }
}
