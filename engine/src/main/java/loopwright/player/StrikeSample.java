package loopwright.player;

import java.util.BitSet;
import loopwright.flight.Strike;

/**
 * Strikes of one swing, kept for one bearing of the aim after the other: how each was struck, and what still standard air
 * and ordinary ground make of it. Floats: a round in the wind keeps hundreds of samples.
 */
public final class StrikeSample {
    private static final int CARRY = 0;
    private static final int DIRECTION = 1;
    private static final int RUN = 2;
    private static final int APEX = 3;
    private static final int LOFT = 4;
    private static final int GUST_ALONG = 5;
    private static final int GUST_ACROSS = 6;
    private static final int USUAL_FORWARD = 7;
    private static final int USUAL_RIGHT = 8;
    private static final int USUAL_APEX = 9;
    private static final int USUAL_HEADING = 10;
    private static final int USUAL_FAIRWAY_RUN = 11;
    private static final int USUAL_GREEN_RUN = 12;
    private static final int FIELDS = 13;

    private final float[] numbers;
    private final BitSet low = new BitSet();

    public StrikeSample(int size) {
        numbers = new float[FIELDS * size];
    }

    /**
     * Keeps a strike of still air.
     *
     * @param swing on any bearing
     */
    public void put(int i, Landing strike, AimedSwing swing, double gustAlong, double gustAcross) {
        Strike usual = new Strike();
        swing.readUsual(strike, usual);
        int at = FIELDS * i;
        numbers[at + CARRY] = (float) strike.carryMetres;
        numbers[at + DIRECTION] = (float) strike.directionRadians;
        numbers[at + RUN] = (float) strike.runMetres;
        numbers[at + APEX] = (float) strike.apexMetres;
        numbers[at + LOFT] = (float) strike.loft;
        numbers[at + GUST_ALONG] = (float) gustAlong;
        numbers[at + GUST_ACROSS] = (float) gustAcross;
        numbers[at + USUAL_FORWARD] = (float) usual.forwardMetres;
        numbers[at + USUAL_RIGHT] = (float) usual.rightMetres;
        numbers[at + USUAL_APEX] = (float) usual.apexMetres;
        numbers[at + USUAL_HEADING] = (float) usual.headingRadians;
        numbers[at + USUAL_FAIRWAY_RUN] = (float) usual.fairwayRunMetres;
        numbers[at + USUAL_GREEN_RUN] = (float) usual.greenRunMetres;
        low.set(i, strike.low);
    }

    /** What the day makes of a strike for the bearing of {@code swing}, on ground as high as the ball lay. */
    public void read(int i, AimedSwing swing, Landing out) {
        int at = FIELDS * i;
        out.strike(numbers[at + CARRY], numbers[at + DIRECTION], low.get(i), numbers[at + RUN], numbers[at + APEX], 0);
        out.loft = numbers[at + LOFT];
        Strike usual = new Strike();
        usual.forwardMetres = numbers[at + USUAL_FORWARD];
        usual.rightMetres = numbers[at + USUAL_RIGHT];
        usual.apexMetres = numbers[at + USUAL_APEX];
        usual.headingRadians = numbers[at + USUAL_HEADING];
        usual.fairwayRunMetres = numbers[at + USUAL_FAIRWAY_RUN];
        usual.greenRunMetres = numbers[at + USUAL_GREEN_RUN];
        swing.change(out, usual, numbers[at + GUST_ALONG], numbers[at + GUST_ACROSS]);
    }
}
