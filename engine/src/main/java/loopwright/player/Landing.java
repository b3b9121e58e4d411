package loopwright.player;

import loopwright.flight.DayChange;
import loopwright.flight.Descent;
import loopwright.ground.Rise;

/** One strike and where it comes down, in the player's own frame; a mutable result that hot loops reuse. */
public final class Landing {
    private static final int SHIFTS = 4;

    /** Carry in still standard air, metres: as it was struck, whatever the day. */
    public double carryMetres;
    /** Finish direction of the carry in still standard air, + right of the aim. */
    public double directionRadians;
    /** True if the ball flies low: under branches, and under the wind. */
    public boolean low;
    /**
     * Loft delivered, in standard deviations above the usual: of two strikes that carry as far in still air the one with
     * more flies higher. Only the day makes a difference of it; a strike has the usual until it is set.
     */
    public double loft;

    /** Metres along the aim. */
    public double forwardMetres;
    /** Metres to the right of the aim. */
    public double rightMetres;
    /** Run after landing off the green, metres of level fairway. */
    public double runMetres;
    /** Run after landing on the green, metres of level green. */
    public double greenRunMetres;
    /** Greatest height of the flight, metres. */
    public double apexMetres;
    /** Descent below the horizontal; 0 for a shot whose length is judged by eye, which meets the ground where it is meant to. */
    public double descentRadians;
    /** Speed at landing, m/s; 0 where no day was flown. */
    public double landingSpeed;
    /** Horizontal direction of travel at landing, relative to the aim, + right. */
    public double headingRadians;

    /** Sets a strike in still standard air on ordinary ground. */
    void strike(double carry, double direction, boolean low, double run, double apex, double descent) {
        carryMetres = Math.max(0, carry);
        directionRadians = direction;
        this.low = low;
        loft = 0;
        forwardMetres = carryMetres * Math.cos(direction);
        rightMetres = carryMetres * Math.sin(direction);
        runMetres = run;
        greenRunMetres = run;
        apexMetres = apex;
        descentRadians = descent;
        landingSpeed = 0;
        headingRadians = direction;
    }

    /** The same strike, before any day. */
    Landing copy() {
        Landing out = new Landing();
        out.strike(carryMetres, directionRadians, low, runMetres, apexMetres, descentRadians);
        out.loft = loft;
        return out;
    }

    /** From the ball to rest on level fairway. */
    double totalMetres() {
        return Math.hypot(forwardMetres, rightMetres) + runMetres;
    }

    /** Direction of the landing place from the ball, + right of the aim. */
    double finishRadians() {
        return Math.atan2(rightMetres, forwardMetres);
    }

    /** Turns it into what it is on the day. */
    void change(DayChange day) {
        forwardMetres += day.forwardMetres;
        rightMetres += day.rightMetres;
        apexMetres *= day.apexFactor;
        descentRadians = day.descentRadians;
        landingSpeed = day.landingSpeed;
        headingRadians += day.turnRadians;
        double b = DayChange.RUN_OFFSET_METRES;
        double usual = runMetres;
        runMetres = Math.max(0, (usual + b) * day.fairwayRunFactor - b);
        greenRunMetres = Math.max(0, (usual + b) * day.greenRunFactor - b);
    }

    /** Moves it along its descent to the ground, taken for a plane where it was last thought to come down. */
    void shift(Rise rise) {
        double forward = forwardMetres;
        double right = rightMetres;
        float steepness = Descent.steepness(descentRadians);
        float bend = Descent.bend(landingSpeed, descentRadians);
        double ahead = Math.cos(headingRadians);
        double across = Math.sin(headingRadians);
        double back = 0;
        for (int i = 0; i < SHIFTS; i++) {
            double here = rise.at(forwardMetres, rightMetres);
            double slope = rise.at(forwardMetres + ahead, rightMetres + across) - here;
            back = Descent.back((float) (here + slope * back), (float) slope, steepness, bend);
            forwardMetres = forward - back * ahead;
            rightMetres = right - back * across;
        }
    }
}
