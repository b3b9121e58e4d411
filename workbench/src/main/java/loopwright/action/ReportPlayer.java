package loopwright.action;

import java.util.List;
import java.util.Optional;
import loopwright.course.Course;
import loopwright.numerics.Watch;
import loopwright.player.PlayerProfile;
import loopwright.scoring.BenchmarkBaseline;
import loopwright.scoring.BenchmarkTable;
import loopwright.scoring.ClubMiss;
import loopwright.scoring.OrdinaryMiss;
import loopwright.scoring.OwnPast;
import loopwright.scoring.RoundRecord;
import loopwright.scoring.RoundReview;
import loopwright.scoring.ScoreGap;
import loopwright.scoring.ShotAttribution;
import loopwright.scoring.StrokesBaseline;

/** Reviews the kept rounds of a player. */
public final class ReportPlayer {
    private static final int MOST_ROUNDS_OF_PAST = 20;
    private static final int LOWEST_TARGET = 60;
    private static final int HIGHEST_TARGET = 130;

    private final Workroom room;
    private final KeepRounds rounds;
    private final Benchmarks benchmarks;
    private final SplitRound splitting;
    private final StrokesBaseline tour;

    public ReportPlayer(
            Workroom room, KeepRounds rounds, Benchmarks benchmarks, SplitRound splitting, StrokesBaseline tour) {
        this.room = room;
        this.rounds = rounds;
        this.benchmarks = benchmarks;
        this.splitting = splitting;
        this.tour = tour;
    }

    /**
     * What is asked.
     *
     * @param round id of the round to review; empty: the latest that is no lesson, else the latest
     * @param target score to beat over 18 holes; empty: the goal of the player file
     * @param solve true if a benchmark may be solved now; else only one that is there is used
     * @param split true to divide the round's strokes into decision, execution and luck, which takes a while
     * @param inferAims where an aim was not noted: true infers it, false divides into two parts only
     */
    public record Request(
            String player,
            Optional<String> round,
            Optional<Integer> target,
            boolean solve,
            boolean split,
            boolean inferAims) {}

    public PlayerReport report(Request request, Watch watch) {
        Shelf.Document player = room.store().players().get(request.player());
        List<KeepRounds.Kept> all = rounds.rounds(player.id());
        if (all.isEmpty()) {
            throw new UserFault("No round of " + player.name()
                    + " is kept; add one with \"loopwright round add\" or \"loopwright round import\".");
        }
        KeepRounds.Kept chosen = chosen(all, request.round());
        int target = target(request, player);
        PlayerProfile profile = room.player(player.id(), player.version());
        Optional<BenchmarkTable> benchmark = benchmark(chosen, profile, target, request.solve(), watch);
        List<RoundRecord> before = all.stream()
                .filter(k -> k.entry().day().isBefore(chosen.entry().day()))
                .map(KeepRounds.Kept::record)
                .toList();
        PlayerRecords records = room.store().records();
        return new PlayerReport(
                player.name(),
                target,
                all.size(),
                chosen.entry(),
                chosen.record(),
                RoundReview.of(chosen.record(), tour),
                benchmark.map(b -> RoundReview.of(chosen.record(), new BenchmarkBaseline(b))),
                OwnPast.of(latest(before)).map(past -> RoundReview.of(chosen.record(), past)),
                request.split() ? split(player.id(), chosen, request, watch) : List.of(),
                OrdinaryMiss.of(chosen.record(), profile.player()),
                benchmark.map(b -> ScoreGap.of(sameCourse(all, chosen), b)),
                ClubMiss.of(all.stream().map(KeepRounds.Kept::record).toList(), profile.player()),
                Standing.of(records, player.id()),
                findCourse(chosen).map(c -> ground(c, chosen)),
                records.listLessons(player.id()).stream()
                        .filter(l -> !l.homework().isEmpty() && !l.done())
                        .toList(),
                records.listForecasts(player.id()).stream()
                        .filter(f -> f.day().isAfter(chosen.entry().day()))
                        .findFirst());
    }

    private PlayerReport.Ground ground(Shelf.Entry entry, KeepRounds.Kept round) {
        Course course = room.course(entry.id(), entry.version());
        return new PlayerReport.Ground(course, course.findTeeSet(tees(round)).orElseThrow());
    }

    private static KeepRounds.Kept chosen(List<KeepRounds.Kept> all, Optional<String> id) {
        if (id.isPresent()) {
            return all.stream()
                    .filter(k -> k.entry().id().equals(id.get()))
                    .findFirst()
                    .orElseThrow(() -> new UserFault("There is no round " + id.get()
                            + " of this player; \"loopwright round list\" shows what is kept."));
        }
        return all.stream().filter(k -> !k.entry().lesson()).reduce((a, b) -> b).orElse(all.get(all.size() - 1));
    }

    private int target(Request request, Shelf.Document player) {
        Intake intake = new Intake(room.store().records().listIntake(player.id()));
        int target = request.target()
                .orElseGet(() -> intake.goalScore()
                        .orElseThrow(
                                () -> new UserFault("Say the score to beat over 18 holes: --target 89, or once for all"
                                        + " in the player file (loopwright player file \"" + player.name()
                                        + "\" --goal 89).")));
        if (target < LOWEST_TARGET || target > HIGHEST_TARGET) {
            throw new UserFault("There is no benchmark player of " + target + "; give a score over 18 holes from "
                    + LOWEST_TARGET + " to " + HIGHEST_TARGET + ".");
        }
        return target;
    }

    private Optional<BenchmarkTable> benchmark(
            KeepRounds.Kept chosen, PlayerProfile profile, int target, boolean solve, Watch watch) {
        return findCourse(chosen).flatMap(course -> {
            var wanted = new Benchmarks.Wanted(course, tees(chosen), profile, target);
            return solve ? Optional.of(benchmarks.get(wanted, watch)) : benchmarks.find(wanted);
        });
    }

    private static String tees(KeepRounds.Kept round) {
        return round.entry().tees().isEmpty() ? "middle" : round.entry().tees();
    }

    /** The round's course, if the store has it with the tees that were played. */
    private Optional<Shelf.Entry> findCourse(KeepRounds.Kept round) {
        return room.store().courses().list().stream()
                .filter(c -> c.name().equalsIgnoreCase(round.entry().course()))
                .filter(c ->
                        room.course(c.id(), c.version()).findTeeSet(tees(round)).isPresent())
                .findFirst();
    }

    private List<ShotAttribution> split(String player, KeepRounds.Kept chosen, Request request, Watch watch) {
        return findCourse(chosen)
                .map(course -> splitting.split(player, chosen, course, request.inferAims(), watch))
                .orElse(List.of());
    }

    private static List<RoundRecord> latest(List<RoundRecord> before) {
        return before.subList(Math.max(0, before.size() - MOST_ROUNDS_OF_PAST), before.size());
    }

    private static List<RoundRecord> sameCourse(List<KeepRounds.Kept> all, KeepRounds.Kept chosen) {
        return all.stream()
                .filter(k -> k.entry().course().equalsIgnoreCase(chosen.entry().course())
                        && k.entry().tees().equalsIgnoreCase(chosen.entry().tees()))
                .map(KeepRounds.Kept::record)
                .toList();
    }
}
