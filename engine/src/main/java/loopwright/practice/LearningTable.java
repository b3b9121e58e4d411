package loopwright.practice;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.Swing;
import loopwright.player.TouchShot;
import loopwright.units.Distance;

/**
 * What is assumed of a player's learning, by skill. Nobody has published strokes or spread per hour of practice in golf: every
 * number here is an assumption to be edited by the coach and corrected by the drill record.
 *
 * <p>Floor: the spread that the prior gives a player ten strokes better (never better than the tour), beside what the player
 * has today; so a weakness beside his own level has further to come down. At least {@link #LEAST_ROOM} of room is left to
 * everybody, and nobody comes below {@link #LOWEST_FLOOR} in the months of a plan.
 */
public record LearningTable(Map<Skill, LearningCurve> curves) {
    static final double STROKES_BETTER = 10;
    static final double TOUR_LEVEL = 71;
    static final double LEAST_ROOM = 0.05;
    static final double LOWEST_FLOOR = 0.4;
    /** Wider than usual at his level by more than this is worth a word, and a plan of its own: assumed. */
    public static final double NOTABLY_WIDER = 1.15;
    /** Share of the holes that are still played by habit however well a plan was learned. */
    static final double HABIT_FLOOR = 0.2;

    public LearningTable {
        EnumMap<Skill, LearningCurve> sorted = new EnumMap<>(Skill.class);
        sorted.putAll(curves);
        curves = Collections.unmodifiableMap(sorted);
    }

    /** What is assumed of a player, for all skills that apply to him. */
    public static LearningTable assumed(Player player) {
        EnumMap<Skill, LearningCurve> out = new EnumMap<>(Skill.class);
        for (Skill skill : Skill.values()) {
            if (skill.appliesTo(player)) {
                out.put(skill, new LearningCurve(floor(skill, player), hours(skill)));
            }
        }
        return new LearningTable(out);
    }

    public LearningCurve get(Skill skill) {
        LearningCurve curve = curves.get(skill);
        if (curve == null) {
            throw new IllegalArgumentException(skill + " does not apply to this player");
        }
        return curve;
    }

    public LearningTable with(Skill skill, LearningCurve curve) {
        Map<Skill, LearningCurve> out = new EnumMap<>(curves);
        out.put(skill, curve);
        return new LearningTable(out);
    }

    /** Hours to 63 % of the way: assumed; short strokes are learned sooner than long swings, a plan soonest. */
    private static double hours(Skill skill) {
        return switch (skill) {
            case DRIVER_DIRECTION, MISHITS, LONG_APPROACH -> 60;
            case DRIVER_DISTANCE -> 80;
            case MIDDLE_APPROACH, SHORT_APPROACH, FULL_WEDGES -> 50;
            case PARTIAL_WEDGES, PITCH -> 30;
            case CHIP, BUNKER_SHOT, START_LINE, READING -> 25;
            case PACE -> 20;
            case DECISIONS -> 6;
        };
    }

    private static double floor(Skill skill, Player player) {
        if (skill == Skill.DECISIONS) {
            return HABIT_FLOOR;
        }
        if (skill == Skill.DRIVER_DISTANCE) {
            return 0.75; // 5 % longer at best, some 12 yd: assumed
        }
        double level = Math.min(player.level(), Math.max(TOUR_LEVEL, player.level() - STROKES_BETTER));
        double floor = spread(skill, usual(player, level)) / spread(skill, player);
        return Math.max(LOWEST_FLOOR, Math.min(1 - LEAST_ROOM, floor));
    }

    /** Skills of the long and short game that are notably wider, or go wrong notably more often, than usual at the player's level. */
    public static Set<Skill> weaknesses(Player player) {
        Set<Skill> out = EnumSet.noneOf(Skill.class);
        for (Skill skill : Skill.ofExecution()) {
            if (!skill.isPutting() && skill.appliesTo(player) && besideLevel(skill, player) > NOTABLY_WIDER) {
                out.add(skill);
            }
        }
        return out;
    }

    /** The player without his {@link #weaknesses}: as usual at his level there. */
    public static Player mended(Player player) {
        Player out = player;
        for (Skill skill : weaknesses(player)) {
            out = skill.of(out, 1 / besideLevel(skill, player));
        }
        return out;
    }

    /** How wide a skill of the player is beside what is usual at his level: 1.3 is a third wider. */
    public static double besideLevel(Skill skill, Player player) {
        return skill == Skill.DECISIONS || skill == Skill.DRIVER_DISTANCE
                ? 1
                : spread(skill, player) / spread(skill, usual(player, player.level()));
    }

    /** The prior's player of a level with the same clubs at the same lengths. */
    private static Player usual(Player player, double level) {
        return PlayerPrior.of(level, player.hand())
                .withDriverCarry(
                        Distance.ofMetres(Skill.driver(player).pattern().carryMetres()))
                .withBag(player.clubs())
                .player(player.name());
    }

    /** A number that shrinks in proportion to what is left of the skill: the mean over the shots it is about. */
    private static double spread(Skill skill, Player player) {
        return switch (skill) {
            case START_LINE -> player.putting().startLineSdRadians();
            case PACE -> player.putting().paceSd();
            case READING -> player.putting().readingSd();
            case CHIP -> spread(player, TouchShot.Kind.CHIP);
            case PITCH -> spread(player, TouchShot.Kind.PITCH);
            case BUNKER_SHOT -> spread(player, TouchShot.Kind.BUNKER_SHOT);
            default ->
                player.swings().stream()
                        .filter(s -> skill.isOf(player, s))
                        .mapToDouble(s -> spread(skill, s))
                        .average()
                        .orElse(1);
        };
    }

    private static double spread(Skill skill, Swing swing) {
        return skill == Skill.MISHITS
                ? swing.pattern().mishitRate()
                : skill == Skill.DRIVER_DIRECTION
                        ? swing.pattern().directionSdRadians()
                        : Math.sqrt(swing.pattern().directionSdRadians()
                                * swing.pattern().carrySdMetres()
                                / swing.pattern().carryMetres());
    }

    private static double spread(Player player, TouchShot.Kind kind) {
        return player.touchShots().stream()
                .filter(t -> t.kind() == kind)
                .mapToDouble(t -> Math.sqrt(t.distanceSdMetres(12) * t.directionSdRadians()))
                .average()
                .orElse(1);
    }
}
