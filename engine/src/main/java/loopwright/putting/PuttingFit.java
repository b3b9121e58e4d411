package loopwright.putting;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loopwright.putting.LoggedPutt.Side;

/**
 * A player's putting from his record: direction spread, pace spread and, with a straight-putt drill, the start line
 * alone.
 *
 * <p>Each putt is taken as {@link LevelPutt} struck at the best pace of the player's level, times one habit of length
 * common to all (nobody notes what he intended). Likelihood: P(holed); of a miss with its leave {@link LeaveDensity}, in
 * the half circle if short or long was noted; of a bare miss 1 - P(holed), or P(short). Prior: the logarithms of the
 * spreads are normal about the level's prior with standard deviations 0.25 (direction), 0.30 (pace) and 0.35 (start
 * line), the habit of length about 0 with 0.05, all assumed. The answer is the greatest posterior; intervals are 90 %
 * from the curvature there in the logarithm.
 *
 * <p>Without the drill start line and reading cannot be told apart: they are reported as one direction spread, and the
 * skill splits it in the prior's proportion. With it, reading is what the drill's start line leaves over:
 * sqrt(direction^2 - start^2) / typical break.
 */
public final class PuttingFit {
    private static final int DIRECTION = 0;
    private static final int PACE = 1;
    private static final int LENGTH = 2;
    private static final int START_LINE = 3;
    private static final double[] PRIOR_SDS = {0.25, 0.30, 0.05, 0.35};
    private static final double NINETY_PERCENT = 1.6449;

    /** One putt that no skill explains (a slip of the pen) must not decide the fit. */
    private static final double LEAST_LIKELIHOOD = 1e-5;

    private final Estimate direction;
    private final Estimate pace;
    private final Estimate length;
    private final Optional<Estimate> startLine;
    private final PuttingSkill skill;
    private final List<LoggedPutt> putts;

    /**
     * One fitted value with its 90 % interval.
     *
     * @param assumedShare variance (of the logarithm for a spread) after the putts over before: 1 prior only, near 0
     *     measured
     */
    public record Estimate(double value, double low, double high, double assumedShare) {
        private static Estimate of(PosteriorPeak peak, int i) {
            double at = peak.at(i);
            double wide = NINETY_PERCENT * peak.sd(i);
            double share = Math.min(1, Math.pow(peak.sd(i) / PRIOR_SDS[i], 2));
            return i == LENGTH
                    ? new Estimate(at, at - wide, at + wide, share)
                    : new Estimate(Math.exp(at), Math.exp(at - wide), Math.exp(at + wide), share);
        }
    }

    private PuttingFit(PosteriorPeak peak, boolean drill, PuttingSkill prior, List<LoggedPutt> putts) {
        this.direction = Estimate.of(peak, DIRECTION);
        this.pace = Estimate.of(peak, PACE);
        this.length = Estimate.of(peak, LENGTH);
        this.startLine = drill ? Optional.of(Estimate.of(peak, START_LINE)) : Optional.empty();
        this.putts = List.copyOf(putts);
        this.skill = skill(prior);
    }

    public static PuttingFit of(List<LoggedPutt> putts, PuttingSkill prior, GreenSpeed speed) {
        return of(putts, prior, new LevelGreenOdds(prior, speed));
    }

    /** As above with the odds of the prior, from which the usual pace is read, already at hand. */
    static PuttingFit of(List<LoggedPutt> putts, PuttingSkill prior, LevelGreenOdds usual) {
        boolean drill = putts.stream().anyMatch(LoggedPutt::straightDrill);
        double[] centre = {
            Math.log(prior.directionSdRadians()), Math.log(prior.paceSd()), 0, Math.log(prior.startLineSdRadians())
        };
        PosteriorPeak peak = PosteriorPeak.of(p -> loss(p, centre, putts, usual), Arrays.copyOf(centre, drill ? 4 : 3));
        return new PuttingFit(peak, drill, prior, putts);
    }

    private static double loss(double[] p, double[] centre, List<LoggedPutt> putts, LevelGreenOdds usual) {
        double loss = 0;
        for (int i = 0; i < p.length; i++) {
            double z = (p[i] - centre[i]) / PRIOR_SDS[i];
            loss += 0.5 * z * z;
        }
        double deceleration = usual.putt().deceleration();
        for (LoggedPutt putt : putts) {
            double spread = Math.exp(putt.straightDrill() ? p[START_LINE] : p[DIRECTION]);
            double usualRoll = putt.metres() + usual.bestOvershootMetres(putt.metres());
            double overshoot = usualRoll * (1 + p[LENGTH]) - putt.metres();
            LevelPutt stroke = new LevelPutt(spread, Math.exp(p[PACE]), deceleration);
            loss -= Math.log(Math.max(LEAST_LIKELIHOOD, likelihood(stroke, putt, overshoot)));
        }
        return loss;
    }

    private static double likelihood(LevelPutt stroke, LoggedPutt putt, double overshoot) {
        if (putt.leaveMetres().isPresent()) {
            double left = putt.leaveMetres().getAsDouble();
            return LeaveDensity.of(stroke, putt.metres(), overshoot, left, putt.side());
        }
        double holed = HoledChance.of(stroke, putt.metres(), overshoot);
        if (putt.holed()) {
            return holed;
        }
        double mean = putt.metres() + overshoot;
        double beShort = NormalLaw.below(-overshoot / (stroke.paceSd() * mean));
        return switch (putt.side()) {
            case SHORT -> beShort;
            case LONG -> 1 - holed - beShort;
            default -> 1 - holed;
        };
    }

    private PuttingSkill skill(PuttingSkill prior) {
        double reading = prior.readingSd() * direction.value() / prior.directionSdRadians();
        double start = prior.startLineSdRadians() * direction.value() / prior.directionSdRadians();
        if (startLine.isPresent()) {
            start = startLine.get().value();
            double rest = direction.value() * direction.value() - start * start;
            reading = Math.sqrt(Math.max(0, rest)) / PuttingSkill.TYPICAL_BREAK_RADIANS;
        }
        return new PuttingSkill(start, pace.value(), reading, putts.size());
    }

    /** Start line and reading as one, radians. */
    public Estimate direction() {
        return direction;
    }

    /** Share of the intended roll. */
    public Estimate pace() {
        return pace;
    }

    /**
     * Habit of length: how much farther (as a share) he rolls it than the best pace of his level asks; below 0: he
     * leaves it short.
     */
    public Estimate length() {
        return length;
    }

    /** The start line alone, radians; only where a straight-putt drill was recorded. */
    public Optional<Estimate> findStartLine() {
        return startLine;
    }

    /** The skill to plan with. */
    public PuttingSkill skill() {
        return skill;
    }

    public int putts() {
        return putts.size();
    }

    /** How many misses were noted on a side. */
    public int misses(Side side) {
        return (int) putts.stream().filter(p -> !p.holed() && p.side() == side).count();
    }
}
