package loopwright.action;

import java.nio.file.Path;
import loopwright.player.Player;
import loopwright.player.PlayerProfile;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.putting.LoggedPutt;
import loopwright.putting.LoggedPutt.Side;
import loopwright.putting.PuttingFit;
import loopwright.putting.PuttingSkill;
import loopwright.putting.PuttingSkillPrior;
import loopwright.units.Distance;

/** Fits a player's putting to his logged putts. */
public final class PuttFitting {
    private final PuttLogFile files;
    private final PlayerFiles players;

    public PuttFitting(PuttLogFile files, PlayerFiles players) {
        this.files = files;
        this.players = players;
    }

    /** Reads a file; what is wrong in it is for the caller to show before anything is fitted. */
    public PuttImport read(Path file) {
        return files.read(file);
    }

    /**
     * Fits the putts of a file.
     *
     * @param keepGoodRows the user's word that the good rows may be used although others are bad
     */
    public PuttingFit fit(Path file, PuttImport read, boolean keepGoodRows, double level, GreenSpeed speed) {
        int bad = read.problems().size();
        if (bad > 0 && !keepGoodRows) {
            throw new UserFault(
                    file + " has " + (bad == 1 ? "a row" : bad + " rows") + " that cannot be used, the first in "
                            + read.problems().get(0).sentence()
                            + " Nothing was fitted; mend the file, or add --keep-good-rows.");
        }
        if (read.putts().isEmpty()) {
            throw new UserFault(file + " has no putt that can be used; at least one with its distance is needed.");
        }
        return PuttingFit.of(read.putts(), PuttingSkillPrior.ofLevel(level), speed);
    }

    /** The fit as numbers for other programs and for printing. */
    public PuttFitAnswer answer(PuttingFit fit, PuttImport read, double level, GreenSpeed speed) {
        LevelGreenOdds odds = new LevelGreenOdds(fit.skill(), speed);
        return new PuttFitAnswer(
                fit.putts(),
                (int) read.putts().stream().filter(LoggedPutt::straightDrill).count(),
                level,
                degrees(fit.direction()),
                percent(fit.pace()),
                percent(fit.length()),
                fit.findStartLine().map(PuttFitting::degrees).orElse(null),
                100 * fit.skill().readingSd(),
                fit.findStartLine().isPresent(),
                feetWhere(d -> odds.probability(d, 1) > 0.5),
                feetWhere(d -> odds.expectedPutts(d) < 2),
                new PuttFitAnswer.Misses(
                        fit.misses(Side.SHORT), fit.misses(Side.LONG), fit.misses(Side.LEFT), fit.misses(Side.RIGHT)));
    }

    private static PuttFitAnswer.Estimate degrees(PuttingFit.Estimate e) {
        return new PuttFitAnswer.Estimate(
                Math.toDegrees(e.value()), Math.toDegrees(e.low()), Math.toDegrees(e.high()), e.assumedShare());
    }

    private static PuttFitAnswer.Estimate percent(PuttingFit.Estimate e) {
        return new PuttFitAnswer.Estimate(100 * e.value(), 100 * e.low(), 100 * e.high(), e.assumedShare());
    }

    /** The distance up to which a condition holds, found by halving between 1 inch and 40 m. */
    private static double feetWhere(java.util.function.DoublePredicate holds) {
        double low = 0.0254;
        double high = 40;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            if (holds.test(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Distance.ofMetres(low).feet();
    }

    /** The player's level and putting as a file has them. */
    public Player player(Path file) {
        return players.read(file).player();
    }

    /** Writes the player of a file with another putting to a file. */
    public void withPutting(Path from, PuttingSkill putting, Path to) {
        PlayerProfile profile = players.read(from);
        Player p = profile.player();
        players.write(
                new PlayerProfile(
                        new Player(
                                p.name(),
                                p.hand(),
                                p.level(),
                                p.swings(),
                                p.touchShots(),
                                putting,
                                p.lostBallsPerRound()),
                        profile.day(),
                        profile.habit()),
                to);
    }
}
