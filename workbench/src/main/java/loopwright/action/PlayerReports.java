package loopwright.action;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.action.Jobs.Job;

/** Reports on kept rounds for the bench, in the background. */
public final class PlayerReports {
    private final Workroom room;
    private final ReportPlayer reports;
    private final Jobs jobs;

    public PlayerReports(Workroom room, ReportPlayer reports, JobBoard board) {
        this.room = room;
        this.reports = reports;
        jobs = board.rounds();
    }

    /** The score that a player of the store is measured against: the one asked for, else the goal of his file. */
    public OptionalInt target(Shelf.Entry player, OptionalInt asked) {
        return asked.isPresent() ? asked : new Intake(room.store().records().listIntake(player.id())).goalScore();
    }

    /** Everything a round tells; the first time on a course the benchmark is solved, which takes as long as a plan. */
    public Job<PlayerReport> whole(Shelf.Entry player, String round, int target) {
        return report("report ", player, round, target, true);
    }

    /** What a round tells at once: all of it if it was worked out before, else with a benchmark only if one was solved. */
    public Job<PlayerReport> atOnce(Shelf.Entry player, String round, int target) {
        boolean made = jobs.find(key("report ", player, round, target))
                .flatMap(Job::findResult)
                .isPresent();
        return report(made ? "report " : "newest ", player, round, target, made);
    }

    private Job<PlayerReport> report(String kind, Shelf.Entry player, String round, int target, boolean whole) {
        String key = key(kind, player, round, target);
        ReportPlayer.Request request =
                new ReportPlayer.Request(player.id(), Optional.of(round), Optional.of(target), whole, whole, true);
        return jobs.submit(key, key, watch -> reports.report(request, watch));
    }

    private String key(String kind, Shelf.Entry player, String round, int target) {
        return kind + player.id() + "." + player.version() + " " + round + " " + target + " "
                + Integer.toHexString(known(player.id()));
    }

    /** Changes with every round and forecast of the player and with every course. */
    private int known(String player) {
        PlayerRecords records = room.store().records();
        return Objects.hash(
                records.listRounds(player),
                records.listForecasts(player),
                room.store().courses().list());
    }
}
