package loopwright.action;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import loopwright.numerics.Watch;
import loopwright.player.BallCount;
import loopwright.player.FitOptions;
import loopwright.player.FittedPlayer;
import loopwright.player.Habit;
import loopwright.player.PatternFit;
import loopwright.player.PlayerProfile;
import loopwright.player.Setting;
import loopwright.player.Shot;
import loopwright.player.ShotLog;
import loopwright.player.TouchFit;
import loopwright.player.TouchReport;
import loopwright.putting.GreenSpeed;
import loopwright.putting.PuttingFit;
import loopwright.putting.PuttingSkillPrior;
import loopwright.units.Distance;

/** Fits a player to measured shots and keeps the result as a player file, numbers and a picture. */
public final class FitPlayer {
    private static final double HALF_LIFE_DAYS = 180;
    private static final double GREEN_FEET = 10;

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
    public record Targets(
            Optional<Path> player, Optional<Path> json, Optional<Path> picture, LengthUnit pictureLengths) {
        public Targets(Optional<Path> player, Optional<Path> json, Optional<Path> picture) {
            this(player, json, picture, LengthUnit.YARDS);
        }
    }

    /** The shots of lists that were read before. */
    public ShotLog shots(List<Path> files, Setting setting) {
        return files.isEmpty()
                ? ShotLog.EMPTY
                : shots.read(files, Map.of(), setting).log();
    }

    public FitResult fit(Request request, Targets targets, Watch watch) {
        requireOnce(request.files());
        ShotImport read = request.files().isEmpty()
                ? ShotImport.NOTHING
                : shots.read(request.files(), request.map(), request.setting());
        ShotLog log = new ShotLog(read.log().shots(), counts(request, read));
        FittedPlayer fitted = PatternFit.fit(
                        request.interview().name(),
                        request.interview().prior(),
                        log,
                        options(request, read),
                        request.seed(),
                        watch)
                .withHabit(request.habit());
        List<TouchReport> touch = TouchFit.of(fitted.profile().player().touchShots(), read.touch());
        Optional<PuttingFit> putting = read.putts().isEmpty()
                ? Optional.empty()
                : Optional.of(PuttingFit.of(
                        read.putts(),
                        PuttingSkillPrior.ofLevel(request.interview().levelOrAssumed()),
                        GreenSpeed.ofRollMetres(Distance.ofFeet(GREEN_FEET).metres())));
        fitted = fitted.withShortGame(
                touch.stream().map(TouchReport::shot).toList(),
                putting.map(PuttingFit::skill).orElse(fitted.profile().player().putting()));
        List<String> notes = notes(request, read, log);
        PlayerProfile profile = fitted.profile();
        MishitWords.sentence(profile.player()).ifPresent(notes::add);
        FitResult result = FitResult.of(fitted, touch, putting, notes);
        targets.picture()
                .ifPresent(file -> pictures.drawPatterns(profile.player(), log, targets.pictureLengths(), file));
        targets.player().ifPresent(file -> players.write(profile, file));
        targets.json().ifPresent(file -> results.write(file, result));
        return result;
    }

    /** Balls of a file that is named twice would count twice. */
    private static void requireOnce(List<Path> files) {
        Set<Path> seen = new HashSet<>();
        for (Path file : files) {
            if (!seen.add(file.toAbsolutePath().normalize())) {
                throw new UserFault(file + " is named twice; name the file of each session once.");
            }
        }
    }

    /** Counted balls of the files, and those that were said: a session of their own behind all others. */
    private static List<BallCount> counts(Request request, ShotImport read) {
        int next = Stream.concat(
                                read.log().shots().stream().map(Shot::session),
                                read.log().counts().stream().map(BallCount::session))
                        .mapToInt(Integer::intValue)
                        .max()
                        .orElse(-1)
                + 1;
        List<BallCount> out = new ArrayList<>(read.log().counts());
        for (BallCount c : request.counts()) {
            out.add(new BallCount(
                    c.club(), c.effort(), c.balls(), c.zone(), c.setting(), next + c.session(), c.ageDays()));
        }
        return out;
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

    private static List<String> notes(Request request, ShotImport read, ShotLog log) {
        List<String> notes = new ArrayList<>(read.notes());
        notes.addAll(CountWords.sentences(log.counts()));
        notes.addAll(request.interview().notes());
        boolean shotsOnRange = !read.log().shots().isEmpty()
                && read.log().shots().stream().noneMatch(s -> s.setting().onCourse());
        if (shotsOnRange) {
            notes.add("All shots are taken as range shots with the player's own balls unless the file says otherwise;"
                    + " the patterns are widened to those on the course by an assumed factor.");
        }
        if (!read.putts().isEmpty()) {
            notes.add("Putts are taken as putted on a green of 10 ft; putt fit takes another speed.");
        }
        if (read.log().shots().isEmpty()
                && read.log().counts().isEmpty()
                && request.counts().isEmpty()) {
            notes.add(
                    read.touch().isEmpty() && read.putts().isEmpty()
                            ? "No ball was measured or counted: every number below is assumed."
                            : "No full shot was measured or counted: the clubs' patterns are assumed.");
        }
        return notes;
    }
}
