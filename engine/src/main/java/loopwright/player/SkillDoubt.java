package loopwright.player;

import java.util.List;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import loopwright.putting.PuttingSkill;

/**
 * What a player's numbers may be as well, given how much they were measured. Of each swing the spread, the carry, the
 * direction and the rate of mishits are drawn about the values that are planned with; part of each is shared by the whole
 * bag. Standard deviations are those of the prior (PriorTable), cut down by the balls: that of the log spread by the assumed
 * share, the others as of normal means and counted events. Touch shots and putting likewise; where nothing was measured
 * they keep the prior's.
 *
 * <p>A stand-in for the fit's own draws, which a player file does not keep.
 */
public final class SkillDoubt {
    /** Of a logarithm of touch and putting spreads where nothing was measured: as the shared spread of the swings. */
    private static final double TOUCH_LOG_SD = PriorTable.SHARED_LOG_SPREAD_SD;
    /** Putts that tell as much about putting as the prior does: assumed. */
    private static final double PRIOR_PUTTS = 50;

    private static final double MOST_MISHITS = 0.9;

    private final Player player;
    private final double sharedShare;
    private final double balls;

    public SkillDoubt(Player player) {
        this.player = player;
        sharedShare = player.swings().stream()
                .mapToDouble(s -> s.evidence().assumedShare())
                .min()
                .orElse(1);
        balls = player.swings().stream().mapToInt(s -> s.evidence().balls()).sum();
    }

    /** One of the players he may be. */
    public Player draw(RandomGenerator random) {
        return draw(random, OptionalDouble.empty());
    }

    /**
     * One of the players he may be, his putting off by so many standard deviations of its doubt: with 1 and -1 by turns an
     * effect in a straight line has the variance it has under normal draws, and putting has to be worked out twice only.
     */
    public Player draw(RandomGenerator random, double putting) {
        return draw(random, OptionalDouble.of(putting));
    }

    private Player draw(RandomGenerator random, OptionalDouble putting) {
        double spread = PriorTable.SHARED_LOG_SPREAD_SD * Math.sqrt(sharedShare) * random.nextGaussian();
        double mishits = after(PriorTable.SHARED_LOG_MISHIT_SD, balls * meanMishitRate()) * random.nextGaussian();
        double length = after(PriorTable.STATED_LENGTH_SD, balls / 400) * random.nextGaussian();
        double bias = after(PriorTable.BIAS_SD, balls * 100) * random.nextGaussian();
        List<Swing> swings = player.swings().stream()
                .map(s -> swing(s, spread, mishits, length, bias, random))
                .toList();
        List<TouchShot> touch = player.touchShots().stream()
                .map(t -> t.withSpread(Math.exp(spread + ownSpread(t.evidence()) * random.nextGaussian())))
                .toList();
        return with(swings, touch, putting(putting.orElseGet(random::nextGaussian)));
    }

    /** The player with one swing's spread one standard deviation of its doubt wider. */
    public Player wider(Swing swing) {
        double factor = Math.exp(logSpreadSd(swing));
        return with(
                player.swings().stream()
                        .map(s -> s.equals(swing)
                                ? new Swing(s.club(), s.effort(), s.pattern().withSpread(factor), s.evidence())
                                : s)
                        .toList(),
                player.touchShots(),
                player.putting());
    }

    /** Standard deviation of the logarithm of a swing's spread, all that is not known of it. */
    public double logSpreadSd(Swing swing) {
        return Math.hypot(PriorTable.SHARED_LOG_SPREAD_SD, PriorTable.CLUB_LOG_SPREAD_SD)
                * Math.sqrt(swing.evidence().assumedShare());
    }

    private Player with(List<Swing> swings, List<TouchShot> touch, PuttingSkill putting) {
        return new Player(
                player.name(), player.hand(), player.level(), swings, touch, putting, player.lostBallsPerRound());
    }

    private double meanMishitRate() {
        return player.swings().stream()
                .mapToDouble(s -> s.pattern().mishitRate())
                .average()
                .orElse(0);
    }

    private Swing swing(Swing s, double spread, double mishits, double length, double bias, RandomGenerator random) {
        ShotPattern p = s.pattern();
        int n = s.evidence().balls();
        double cv = p.carrySdMetres() / p.carryMetres();
        double ownLength = after(PriorTable.NEIGHBOUR_SD, n / (cv * cv));
        double ownBias = after(PriorTable.CLUB_BIAS_SD, n / (p.directionSdRadians() * p.directionSdRadians()));
        double ownMishits = after(PriorTable.FAMILY_LOG_MISHIT_SD, n * p.mishitRate());
        double own = Math.sqrt(Math.max(
                0,
                logSpreadSd(s) * logSpreadSd(s)
                        - PriorTable.SHARED_LOG_SPREAD_SD * PriorTable.SHARED_LOG_SPREAD_SD * sharedShare));
        ShotPattern drawn = p.withSpread(Math.exp(spread + own * random.nextGaussian()))
                .turned(bias + ownBias * random.nextGaussian())
                .longer(Math.exp(length + ownLength * random.nextGaussian()))
                .withMishitsTimes(Math.min(
                        MOST_MISHITS / Math.max(1e-9, p.mishitRate()),
                        Math.exp(mishits + ownMishits * random.nextGaussian())));
        return new Swing(s.club(), s.effort(), drawn, s.evidence());
    }

    private static double ownSpread(Evidence evidence) {
        return TOUCH_LOG_SD * Math.sqrt(evidence.assumedShare());
    }

    private PuttingSkill putting(double draw) {
        PuttingSkill p = player.putting();
        double sd = TOUCH_LOG_SD * Math.sqrt(PRIOR_PUTTS / (PRIOR_PUTTS + p.evidence()));
        double factor = Math.exp(sd * draw);
        return new PuttingSkill(
                Math.min(0.4, p.startLineSdRadians() * factor),
                Math.min(0.9, p.paceSd() * factor),
                p.readingSd() * factor,
                p.evidence());
    }

    /** What is left of a prior standard deviation after data of so much information (one over variance). */
    private static double after(double priorSd, double information) {
        return 1 / Math.sqrt(1 / (priorSd * priorSd) + information);
    }
}
