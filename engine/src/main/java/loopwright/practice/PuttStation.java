package loopwright.practice;

import java.util.Set;
import loopwright.numerics.NormalShare;
import loopwright.player.Player;
import loopwright.putting.Cup;
import loopwright.putting.GreenSpeed;
import loopwright.putting.HoledChance;
import loopwright.putting.LevelPutt;

/**
 * Putts from one distance.
 *
 * @param task what scores a point
 * @param metres to the hole, or to the gate, above the hole's radius
 */
public record PuttStation(Task task, double metres, int tries) implements Station {
    /** Putts to hole are played to finish a foot past: as the set-up says. */
    static final double HOLE_PAST_METRES = 0.305;
    /** Long putts are played to finish in the middle of the zone, a foot and a half past. */
    static final double ZONE_PAST_METRES = 0.457;
    /** Three feet. */
    static final double ZONE_METRES = 0.914;
    /** A gate of a ball and a half leaves a quarter of a ball (42.67 mm) to either side. */
    static final double GATE_CLEARANCE_METRES = 0.0107;

    private static final int HOLE_ANGLES = 40;
    private static final NormalGrid ANGLES = new NormalGrid(61, 5);

    /** What a putt is for. */
    public enum Task {
        /** Holed. */
        HOLE,
        /** Through a gate on a line known to be straight: nothing is read, and pace does not matter. */
        GATE,
        /** Holed, or at rest between the hole and three feet past. */
        PAST
    }

    public PuttStation {
        if (!(metres > Cup.RADIUS_METRES && metres < 40) || tries < 1 || tries > 100) {
            throw new IllegalArgumentException("putts go 0.1 to 40 m and are tried 1 to 100 times");
        }
    }

    @Override
    public int most() {
        return 1;
    }

    @Override
    public double[] points(Player player, GreenSpeed speed) {
        double scored = scored(player, speed);
        return new double[] {1 - scored, scored};
    }

    private double scored(Player player, GreenSpeed speed) {
        LevelPutt putt = LevelPutt.on(speed, player.putting());
        return switch (task) {
            case HOLE -> HoledChance.of(putt, metres, HOLE_PAST_METRES);
            case GATE -> {
                double most = Math.asin(Math.min(1, GATE_CLEARANCE_METRES / metres));
                yield 2 * NormalShare.below(most / player.putting().startLineSdRadians()) - 1;
            }
            case PAST -> ANGLES.mean(z -> inZone(putt, putt.directionSdRadians() * z)) + holedBeside(putt);
        };
    }

    /** For one start direction the chance of a roll that would end level with the zone, the hole left out. */
    private double inZone(LevelPutt putt, double angle) {
        return between(putt, metres / Math.cos(angle), (metres + ZONE_METRES) / Math.cos(angle));
    }

    /** What the hole adds, over the few directions that meet it: rolls that drop but would not end in the zone. */
    private double holedBeside(LevelPutt putt) {
        double widest = Math.asin(Cup.RADIUS_METRES / metres);
        double step = 2 * widest / HOLE_ANGLES;
        double sum = 0;
        for (int i = 0; i < HOLE_ANGLES; i++) {
            double angle = -widest + (i + 0.5) * step;
            double rim = LevelPutt.rimMetres(metres, angle);
            double to = Math.max((metres + ZONE_METRES) / Math.cos(angle), rim + putt.windowMetres(metres, angle));
            double z = angle / putt.directionSdRadians();
            sum += Math.exp(-z * z / 2) * (between(putt, rim, to) - inZone(putt, angle));
        }
        return sum * step / (putt.directionSdRadians() * Math.sqrt(2 * Math.PI));
    }

    /** Chance of a roll between two lengths. */
    private double between(LevelPutt putt, double from, double to) {
        double mean = metres + ZONE_PAST_METRES;
        double sd = putt.paceSd() * mean;
        return NormalShare.below((to - mean) / sd) - NormalShare.below((from - mean) / sd);
    }

    @Override
    public Set<Skill> skills(Player player) {
        return switch (task) {
            case HOLE -> Set.of(Skill.START_LINE, Skill.READING);
            case GATE -> Set.of(Skill.START_LINE);
            case PAST -> Set.of(Skill.PACE);
        };
    }
}
