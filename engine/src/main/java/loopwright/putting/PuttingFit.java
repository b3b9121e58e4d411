package loopwright.putting;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loopwright.putting.LoggedPutt.Side;

/**
 * A player's putting from his record: direction spread, pace spread and, with a straight-putt drill, the start line alone.
 *
 * <p>Each putt is taken as {@link LevelPutt} struck at the best pace of the player's level (an assumption; nobody notes what he
 * intended). Likelihood: P(holed); of a miss with its leave {@link LeaveDensity}, in the half circle if short or long
 * was noted; of a bare miss 1 - P(holed). Prior: the logarithms of the spreads are normal about the level's prior with standard
 * deviations 0.25 (direction), 0.30 (pace) and 0.35 (start line), all assumed. The answer is the greatest posterior; intervals are
 * 90 % from the curvature there in the logarithm.
 *
 * <p>Without the drill start line and reading cannot be told apart: they are reported as one direction spread, and the skill splits it
 * in the prior's proportion. With it, reading is what the drill's start line leaves over: sqrt(direction^2 - start^2) / typical break.
 */
public final class PuttingFit {
    private static final double[] PRIOR_SDS = {0.25, 0.30, 0.35};
    private static final double NINETY_PERCENT = 1.6449;

    private final Estimate direction;
    private final Estimate pace;
    private final Optional<Estimate> startLine;
    private final PuttingSkill skill;
    private final List<LoggedPutt> putts;

    /**
     * One fitted spread with its 90 % interval.
     *
     * @param assumedShare variance of the logarithm after the putts over before: 1 prior only, near 0 measured
     */
    public record Estimate(double value, double low, double high, double assumedShare) {}

    private PuttingFit(Estimate[] estimates, PuttingSkill prior, List<LoggedPutt> putts) {
        this.direction = estimates[0];
        this.pace = estimates[1];
        this.startLine = estimates.length > 2 ? Optional.of(estimates[2]) : Optional.empty();
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
            Math.log(prior.directionSdRadians()), Math.log(prior.paceSd()), Math.log(prior.startLineSdRadians())
        };
        double[] start = Arrays.copyOf(centre, drill ? 3 : 2);
        PosteriorPeak peak = PosteriorPeak.of(
                logs -> {
                    double loss = 0;
                    for (int i = 0; i < logs.length; i++) {
                        double z = (logs[i] - centre[i]) / PRIOR_SDS[i];
                        loss += 0.5 * z * z;
                    }
                    for (LoggedPutt putt : putts) {
                        double spread = Math.exp(putt.straightDrill() ? logs[2] : logs[0]);
                        LevelPutt stroke = new LevelPutt(
                                spread, Math.exp(logs[1]), usual.putt().deceleration());
                        loss -= Math.log(likelihood(stroke, putt, usual.bestOvershootMetres(putt.metres())));
                    }
                    return loss;
                },
                start);
        Estimate[] estimates = new Estimate[start.length];
        for (int i = 0; i < estimates.length; i++) {
            estimates[i] = estimate(peak.at(i), peak.sd(i), PRIOR_SDS[i]);
        }
        return new PuttingFit(estimates, prior, putts);
    }

    private static Estimate estimate(double log, double sd, double priorSd) {
        double share = Math.min(1, sd * sd / (priorSd * priorSd));
        return new Estimate(
                Math.exp(log), Math.exp(log - NINETY_PERCENT * sd), Math.exp(log + NINETY_PERCENT * sd), share);
    }

    private static double likelihood(LevelPutt stroke, LoggedPutt putt, double overshoot) {
        double chance;
        if (putt.leaveMetres().isPresent()) {
            double left = putt.leaveMetres().getAsDouble();
            chance = LeaveDensity.of(stroke, putt.metres(), overshoot, left, putt.side());
        } else {
            double holed = HoledChance.of(stroke, putt.metres(), overshoot);
            chance = putt.holed() ? holed : 1 - holed;
        }
        return Math.max(chance, LEAST_LIKELIHOOD);
    }

    /** One putt that no skill explains (a slip of the pen) must not decide the fit. */
    private static final double LEAST_LIKELIHOOD = 1e-5;

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
