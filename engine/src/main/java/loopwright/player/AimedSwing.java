package loopwright.player;

import loopwright.flight.DayChange;
import loopwright.flight.Strike;
import loopwright.flight.StrikeTable;

/** One swing of a bag on one day, aimed on one bearing: from a strike of its pattern to the landing. Immutable. */
public final class AimedSwing {
    private final StrikeTable solid;
    private final StrikeTable low;
    private final StrikeTable usualSolid;
    private final StrikeTable usualLow;
    private final double runFactor;

    /** The tables of the day for one bearing, and those of still standard air and ordinary ground. */
    AimedSwing(StrikeTable solid, StrikeTable low, StrikeTable usualSolid, StrikeTable usualLow, double runFactor) {
        this.solid = solid;
        this.low = low;
        this.usualSolid = usualSolid;
        this.usualLow = usualLow;
        this.runFactor = runFactor;
    }

    /** True if the wind is gusty: every strike then takes two standard normal draws of its own. */
    public boolean isGusty() {
        return solid.isGusty();
    }

    /**
     * Lands one strike on ground as high as the ball lay; {@link Strike#shiftToHeight} moves it to other ground.
     *
     * @param carryMetres in still standard air, as the pattern says it
     * @param directionRadians finish direction in still standard air, + right of the aim
     * @param lowStrike thin, topped or bladed: flies under the wind
     * @param gustAlong standard normal draw, 0 in a steady wind
     * @param gustAcross standard normal draw, 0 in a steady wind
     */
    public void land(
            double carryMetres,
            double directionRadians,
            boolean lowStrike,
            double gustAlong,
            double gustAcross,
            Strike out) {
        StrikeTable table = lowStrike ? low : solid;
        table.read(carryMetres, directionRadians, 0, gustAlong, gustAcross, out);
        double b = DayFlight.RUN_OFFSET_METRES;
        out.fairwayRunMetres = Math.max(0, runFactor * (out.fairwayRunMetres + b) - b);
        out.greenRunMetres = runFactor * (out.greenRunMetres + b) - b;
    }

    /** Turns a strike of still standard air into what it is on the day, on ground as high as the ball lay. */
    public void change(Landing strike, double gustAlong, double gustAcross) {
        Strike usual = new Strike();
        readUsual(strike, usual);
        change(strike, usual, gustAlong, gustAcross);
    }

    /** What still standard air and ordinary ground make of a strike by the tables: the same for all bearings. */
    void readUsual(Landing strike, Strike out) {
        (strike.low ? usualLow : usualSolid).read(strike.carryMetres, strike.directionRadians, strike.loft, 0, 0, out);
    }

    /** The same where {@link #readUsual} was asked before. */
    void change(Landing strike, Strike usual, double gustAlong, double gustAcross) {
        Strike day = new Strike();
        (strike.low ? low : solid)
                .read(strike.carryMetres, strike.directionRadians, strike.loft, gustAlong, gustAcross, day);
        DayChange change = new DayChange();
        change.beside(day, usual);
        strike.change(change);
    }
}
