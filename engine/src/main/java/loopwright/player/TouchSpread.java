package loopwright.player;

import java.util.List;
import loopwright.ground.Situation;
import loopwright.putting.ChipIn;

/**
 * Where the balls of one short shot stop about the hole, as {@link StrikeModel} strikes them: the density of the distance
 * from the hole, by component (solid first, then the mishits in their order). Along the line and across it a component is
 * normal: solid, SD floor + share d and d sin(direction SD), times the lie's factors; the run adds its own chance along.
 */
final class TouchSpread {
    private static final int ANGLES = 32;
    /** Deviations across the line beyond which there is nothing to sum. */
    private static final double WIDEST = 5;

    private static final int RADII = 24;
    /** A ball that would rest nearer than this dropped. */
    private static final double HOLED = ChipIn.RADIUS_METRES;

    private final TouchShot shot;
    private final double metres;
    private final LieEffect lie;
    private final double runAlong;
    private final double runSd;

    TouchSpread(TouchShot shot, double metres, LieEffect lie) {
        this.shot = shot;
        this.metres = metres;
        this.lie = lie;
        runAlong = shot.runShare() * (lie.run() - 1);
        runSd = shot.runShare() * lie.run() * StrikeModel.TOUCH_RUN_LOG_SD;
    }

    TouchSpread(TouchShot shot, TouchBall ball) {
        this(shot, ball.toHoleMetres(), LieTable.onTouchShot(ball.surface(), Situation.ORDINARY));
    }

    /** Rate of a mishit from the lie if the player's own is a multiple of the shot's. */
    double rate(int mishit, double factor) {
        List<Mishit> all = shot.mishits();
        double sum = all.stream().mapToDouble(Mishit::rate).sum() * lie.mishits() * factor;
        double held = sum > StrikeModel.MOST_MISHITS ? StrikeModel.MOST_MISHITS / sum : 1;
        return all.get(mishit).rate() * lie.mishits() * factor * held;
    }

    /** Density of stopping this far from the hole: component 0 is solid, with its spread times a factor. */
    double density(int component, double spread, double leaveMetres) {
        double r = Math.max(HOLED, leaveMetres);
        return r * ring(component, spread, r);
    }

    /** Chance of stopping within a distance of the hole. */
    double within(int component, double spread, double radiusMetres) {
        double step = radiusMetres / RADII;
        double sum = 0;
        for (int i = 0; i < RADII; i++) {
            double r = (i + 0.5) * step;
            sum += r * ring(component, spread, r) * step;
        }
        return Math.min(1, sum);
    }

    double holed(int component, double spread) {
        return within(component, spread, HOLED);
    }

    /** Mean over the directions from the hole of the plane density, times 2 pi. */
    private double ring(int component, double spread, double r) {
        double middle;
        double along;
        double across;
        if (component == 0) {
            middle = metres * runAlong;
            along = Math.hypot(shot.distanceSdMetres(metres) * lie.distanceSpread() * spread, metres * runSd);
            across = metres * Math.sin(shot.directionSdRadians() * lie.directionSpread() * spread);
        } else {
            Mishit m = shot.mishits().get(component - 1);
            double total = metres * m.carryFactor();
            middle = total * (1 + runAlong) - metres;
            along = Math.hypot(metres * m.carryFactorSd(), total * runSd);
            across = Math.max(0.05, total * Math.sin(m.directionSdRadians()));
        }
        // by angle off the line, as far as the balls are spread across it: far from the hole that is a narrow fan
        double widest = Math.asin(Math.min(1, WIDEST * across / r));
        double step = 2 * widest / ANGLES;
        double sum = 0;
        for (int i = 0; i < ANGLES; i++) {
            double angle = -widest + (i + 0.5) * step;
            double x = r * Math.cos(angle);
            double y = r * Math.sin(angle) / across;
            sum += Math.exp(-y * y / 2) * (bell((x - middle) / along) + bell((x + middle) / along));
        }
        return sum * step / (2 * Math.PI * along * across);
    }

    private static double bell(double z) {
        return Math.exp(-z * z / 2);
    }
}
