package loopwright.action;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.numerics.Watch;
import loopwright.player.BallCount;
import loopwright.player.FitOptions;
import loopwright.player.FittedPlayer;
import loopwright.player.Habit;
import loopwright.player.PatternFit;
import loopwright.player.Setting;
import loopwright.player.ShotLog;

/** Fits a player to measured shots and keeps the result as a player file, numbers and a picture. */
public final class FitPlayer {
    private static final double HALF_LIFE_DAYS = 180;

    private final ShotFiles shots;
    private final PlayerFiles players;
    private final ResultFile results;
    private final PatternPictures pictures;

    public FitPlayer(ShotFiles shots, PlayerFiles players, ResultFile results, PatternPictures pictures) {
        this.shots = shots;
        this.players = players;
        this.results = results;
        this.pictures = pictures;
    }

    /**
     * What to fit.
     *
     * @param interview what the player says of himself
     * @param files shot lists, none or more
     * @param map quantity to column
     * @param setting where the files tell neither ball nor ground
     * @param counts counted balls
     * @param breaks dates behind which balls count less
     * @param habit how the player plays without a plan
     */
    public record Request(
            Interview interview,
            List<Path> files,
            Map<String, String> map,
            Setting setting,
            List<BallCount> counts,
            List<LocalDate> breaks,
            Habit habit,
            long seed) {}

    /** Where results go; what is empty is not written. */
    public record Targets(Optional<Path> player, Optional<Path> json, Optional<Path> picture) {}

    public FitResult fit(Request request, Targets targets, Watch watch) {
        ShotImport read = request.files().isEmpty()
                ? new ShotImport(ShotLog.EMPTY, List.of(), Optional.empty())
                : shots.read(request.files(), request.map(), request.setting());
        ShotLog log = new ShotLog(read.log().shots(), request.counts());
        FittedPlayer fitted = PatternFit.fit(
                        request.interview().name(),
                        request.interview().prior(),
                        log,
                        options(request, read),
                        request.seed(),
                        watch)
                .withHabit(request.habit());
        FitResult result = FitResult.of(fitted, notes(request, read));
        targets.picture()
                .ifPresent(file -> pictures.drawPatterns(fitted.profile().player(), log, file));
        targets.player().ifPresent(file -> players.write(fitted.profile(), file));
        targets.json().ifPresent(file -> results.write(file, result));
        return result;
    }

    private static FitOptions options(Request request, ShotImport read) {
        List<Double> ages = new ArrayList<>();
        for (LocalDate day : request.breaks()) {
            if (read.newest().isEmpty()) {
                throw new UserFault("--break " + day + " needs dated shots; add a column \"date\" (2026-05-31).");
            }
            // a ball hit on the day of the break itself is new
            ages.add((double) ChronoUnit.DAYS.between(day, read.newest().get()));
        }
        return new FitOptions(HALF_LIFE_DAYS, ages.stream().filter(a -> a >= 0).toList(), 0);
    }

    private static List<String> notes(Request request, ShotImport read) {
        List<String> notes = new ArrayList<>(read.notes());
        notes.addAll(request.interview().notes());
        boolean shotsOnRange = !read.log().shots().isEmpty()
                && read.log().shots().stream().noneMatch(s -> s.setting().onCourse());
        if (shotsOnRange) {
            notes.add("All shots are taken as range shots with the player's own balls unless the file says otherwise;"
                    + " the patterns are widened to those on the course by an assumed factor.");
        }
        if (read.log().shots().isEmpty() && request.counts().isEmpty()) {
            notes.add("No ball was measured or counted: every number below is assumed.");
        }
        return notes;
    }
}
