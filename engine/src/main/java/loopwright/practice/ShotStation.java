package loopwright.practice;

import java.util.List;
import java.util.Set;
import loopwright.numerics.NormalShare;
import loopwright.player.Landing;
import loopwright.player.LieEffect;
import loopwright.player.Player;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;

/**
 * Full swings, wedges or short shots from one distance. A point for every zone the ball is in, each zone lying in the one
 * before. Direction is integrated exactly, length and run on even points.
 *
 * @param metres to the target, or to the landing spot; for the driver his own usual length is meant
 * @param zones widest first, at least one
 */
public record ShotStation(DrillShot shot, double metres, List<Zone> zones, int tries) implements Station {
    private static final NormalGrid LENGTHS = new NormalGrid(121, 4.5);
    private static final NormalGrid RUNS = new NormalGrid(9, 3.5);

    public ShotStation {
        zones = List.copyOf(zones);
        if (!(metres > 0 && metres <= 300) || tries < 1 || tries > 100 || zones.isEmpty()) {
            throw new IllegalArgumentException("shots go up to 300 m, are tried 1 to 100 times and need a zone");
        }
    }

    @Override
    public int most() {
        return zones.size();
    }

    @Override
    public double[] points(Player player, GreenSpeed speed) {
        StrikeModel strikes = shot.strikes(player, metres);
        double[] atLeast = new double[zones.size() + 2];
        atLeast[0] = 1;
        for (int i = 0; i < zones.size(); i++) {
            atLeast[i + 1] = Math.min(atLeast[i], scored(strikes, zones.get(i)));
        }
        double[] out = new double[zones.size() + 1];
        for (int i = 0; i < out.length; i++) {
            out[i] = atLeast[i] - atLeast[i + 1];
        }
        return out;
    }

    /** What a touch shot is meant to go, so that a landing spot is met on the fly. */
    double intendedMetres(StrikeModel strikes) {
        return shot.isTouch() && zones.get(0).isOfLanding()
                ? metres / (1 - strikes.touch(shot.number(strikes)).runShare())
                : metres;
    }

    /** How far the shot is from the middle of its zones. */
    double targetMetres(StrikeModel strikes) {
        return shot == DrillShot.DRIVER ? strikes.lengthMetres(0) : metres;
    }

    private double scored(StrikeModel strikes, Zone zone) {
        int number = shot.number(strikes);
        LieEffect lie = shot.lie(strikes);
        double solid = 1;
        double sum = 0;
        for (int m = 0; m < strikes.mishits(number).size(); m++) {
            double rate = strikes.mishitRate(number, m, lie);
            solid -= rate;
            sum += rate * scored(strikes, zone, m, lie);
        }
        return sum + solid * scored(strikes, zone, -1, lie);
    }

    /** Of the mishits of one kind, or with -1 of the solid strikes. */
    private double scored(StrikeModel strikes, Zone zone, int mishit, LieEffect lie) {
        return zone.isOfLanding()
                ? LENGTHS.mean(z1 -> scored(strikes, zone, mishit, lie, z1, 0))
                : LENGTHS.mean(z1 -> RUNS.mean(z3 -> scored(strikes, zone, mishit, lie, z1, z3)));
    }

    private double scored(StrikeModel strikes, Zone zone, int mishit, LieEffect lie, double z1, double z3) {
        Landing straight = strike(strikes, mishit, lie, z1, 0, z3);
        double middle = straight.directionRadians;
        double gone = straight.carryMetres + (zone.isOfLanding() ? 0 : straight.runMetres);
        double sd = Math.abs(strike(strikes, mishit, lie, z1, 1, z3).directionRadians - middle);
        double target = targetMetres(strikes);
        double wide = zone.widest(gone, target);
        double narrow = zone.narrowest(gone, target);
        return wide <= narrow ? 0 : between(narrow, wide, middle, sd) + between(-wide, -narrow, middle, sd);
    }

    private static double between(double low, double high, double mean, double sd) {
        if (!(sd > 0)) {
            return mean >= low && mean < high ? 1 : 0;
        }
        return NormalShare.below((high - mean) / sd) - NormalShare.below((low - mean) / sd);
    }

    private Landing strike(StrikeModel strikes, int mishit, LieEffect lie, double z1, double z2, double z3) {
        Landing out = new Landing();
        int number = shot.number(strikes);
        double intended = intendedMetres(strikes);
        if (mishit < 0) {
            strikes.solid(number, intended, lie, z1, z2, z3, out);
        } else {
            strikes.mishit(number, mishit, intended, lie, z1, z2, z3, out);
        }
        return out;
    }

    @Override
    public Set<Skill> skills(Player player) {
        return shot.skills(player, metres);
    }
}
