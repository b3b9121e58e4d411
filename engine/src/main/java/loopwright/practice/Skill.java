package loopwright.practice;

import java.util.List;
import java.util.stream.DoubleStream;
import loopwright.player.Club;
import loopwright.player.Player;
import loopwright.player.ShotPattern;
import loopwright.player.StrikeModel;
import loopwright.player.Swing;
import loopwright.player.TouchShot;
import loopwright.putting.PuttingSkill;

/**
 * What can be practised. A skill has a share left: 1 as the player is today, 0.9 with a tenth less of what spoils it. For most
 * skills that is spread; for mishits their rate; for distance the shortfall of the driver; for decisions the share of holes
 * that are still played by habit.
 */
public enum Skill {
    /** Direction spread of the driver (of the longest club where there is none). */
    DRIVER_DIRECTION,
    /** Length of the same club. */
    DRIVER_DISTANCE,
    /** Rate of mishits of all swings. */
    MISHITS,
    /** Spread of full swings carrying {@link #LONG_METRES} and more, the driver aside. */
    LONG_APPROACH,
    /** Spread of full swings between long and short ones. */
    MIDDLE_APPROACH,
    /** Spread of full irons carrying less than {@link #SHORT_METRES}, wedges aside. */
    SHORT_APPROACH,
    FULL_WEDGES,
    PARTIAL_WEDGES,
    CHIP,
    PITCH,
    BUNKER_SHOT,
    /** Start line of putts. */
    START_LINE,
    PACE,
    /** Reading of greens. */
    READING,
    /** Playing the plan instead of the habit. */
    DECISIONS;

    /** 170 yd: assumed. */
    public static final double LONG_METRES = 155;
    /** 135 yd: assumed. */
    public static final double SHORT_METRES = 123;
    /** What is left after one honest step: a tenth less. About what a lesson and a month of practice may bring (assumed). */
    public static final double STEP = 0.9;
    /** Length gained by the whole shortfall of the driver: a fifth, so that a step is 2 %, some 5 yd (assumed). */
    private static final double LENGTH_SHORTFALL = 0.2;

    /** Putts that tell as much as the prior does: as in the doubt about a player. */
    private static final double PRIOR_PUTTS = 50;

    private static final double MOST_DIRECTION_SD = 0.4;
    private static final double MOST_PACE_SD = 0.9;
    private static final double MOST_MISHITS = 0.8;

    /** All that concern the player's execution. */
    public static List<Skill> ofExecution() {
        return List.of(values()).subList(0, DECISIONS.ordinal());
    }

    public boolean isPutting() {
        return this == START_LINE || this == PACE || this == READING;
    }

    /** True if it is trained with full swings. */
    public boolean isFullSwing() {
        return ordinal() <= FULL_WEDGES.ordinal();
    }

    /** How much of what is known of the skill is assumed: 0 all measured, 1 nothing. */
    public double assumedShare(Player player) {
        if (this == DECISIONS) {
            return 0;
        }
        if (isPutting()) {
            return PRIOR_PUTTS / (PRIOR_PUTTS + player.putting().evidence());
        }
        return DoubleStream.concat(
                        player.swings().stream()
                                .filter(s -> isOf(player, s))
                                .mapToDouble(s -> s.evidence().assumedShare()),
                        player.touchShots().stream()
                                .filter(t -> isOf(t.kind()))
                                .mapToDouble(t -> t.evidence().assumedShare()))
                .average()
                .orElse(1);
    }

    /** True if the player has a shot to which the skill applies. */
    public boolean appliesTo(Player player) {
        return isPutting()
                || this == DECISIONS
                || player.swings().stream().anyMatch(s -> isOf(player, s))
                || player.touchShots().stream().anyMatch(t -> isOf(t.kind()));
    }

    /** True if the swing is one of those the skill is about. */
    public boolean isOf(Player player, Swing swing) {
        boolean driver = swing.equals(driver(player));
        double carry = swing.pattern().carryMetres();
        boolean wedge = swing.club().family() == Club.Family.WEDGE;
        return switch (this) {
            case DRIVER_DIRECTION, DRIVER_DISTANCE -> driver;
            case MISHITS -> true;
            case LONG_APPROACH -> !driver && swing.isFull() && !wedge && carry >= LONG_METRES;
            case MIDDLE_APPROACH -> !driver && swing.isFull() && !wedge && carry < LONG_METRES && carry >= SHORT_METRES;
            case SHORT_APPROACH -> !driver && swing.isFull() && !wedge && carry < SHORT_METRES;
            case FULL_WEDGES -> !driver && swing.isFull() && wedge;
            case PARTIAL_WEDGES -> !swing.isFull();
            default -> false;
        };
    }

    private boolean isOf(TouchShot.Kind kind) {
        return switch (this) {
            case CHIP -> kind == TouchShot.Kind.CHIP;
            case PITCH -> kind == TouchShot.Kind.PITCH;
            case BUNKER_SHOT -> kind == TouchShot.Kind.BUNKER_SHOT;
            default -> false;
        };
    }

    /** The driver, or the longest swing of a bag without one. */
    static Swing driver(Player player) {
        return player.swings().stream()
                .filter(s -> s.club().family() == Club.Family.DRIVER && s.isFull())
                .findFirst()
                .orElse(player.swings().get(0));
    }

    /** True if a shot of this player's, by its number, changes with the skill. */
    public boolean changes(Player player, StrikeModel strikes, int shot) {
        return strikes.isTouch(shot)
                ? isOf(strikes.touch(shot).kind())
                : isOf(player, player.swings().get(shot));
    }

    /**
     * The player with a share left of what spoils this skill; above 1 he is worse than today.
     *
     * @param left above 0
     */
    public Player of(Player player, double left) {
        if (!(left > 0)) {
            throw new IllegalArgumentException("something of a skill's spread is always left, not " + left);
        }
        return new Player(
                player.name(),
                player.hand(),
                player.level(),
                player.swings().stream()
                        .map(s -> isOf(player, s)
                                ? new Swing(s.club(), s.effort(), of(s.pattern(), left), s.evidence())
                                : s)
                        .toList(),
                player.touchShots().stream()
                        .map(t -> isOf(t.kind()) ? of(t, left) : t)
                        .toList(),
                of(player.putting(), left),
                player.lostBallsPerRound());
    }

    private ShotPattern of(ShotPattern p, double left) {
        return switch (this) {
            case DRIVER_DIRECTION -> p.withDirectionSpread(Math.min(left, MOST_DIRECTION_SD / p.directionSdRadians()));
            case DRIVER_DISTANCE -> p.longer(1 + LENGTH_SHORTFALL * (1 - left));
            case MISHITS -> p.withMishitsTimes(held(left, p.mishitRate()));
            default -> p.withSpread(Math.min(left, MOST_DIRECTION_SD / p.directionSdRadians()));
        };
    }

    /** Of a short shot the spread and the mishits alike. */
    private static TouchShot of(TouchShot t, double left) {
        double rate = t.mishits().stream().mapToDouble(m -> m.rate()).sum();
        return t.withSpread(left).withMishitsTimes(held(left, rate));
    }

    private static double held(double left, double rate) {
        return rate * left > MOST_MISHITS ? MOST_MISHITS / rate : left;
    }

    private PuttingSkill of(PuttingSkill p, double left) {
        return switch (this) {
            case START_LINE ->
                new PuttingSkill(
                        Math.min(MOST_DIRECTION_SD, p.startLineSdRadians() * left),
                        p.paceSd(),
                        p.readingSd(),
                        p.evidence());
            case PACE ->
                new PuttingSkill(
                        p.startLineSdRadians(), Math.min(MOST_PACE_SD, p.paceSd() * left), p.readingSd(), p.evidence());
            case READING -> new PuttingSkill(p.startLineSdRadians(), p.paceSd(), p.readingSd() * left, p.evidence());
            default -> p;
        };
    }
}
