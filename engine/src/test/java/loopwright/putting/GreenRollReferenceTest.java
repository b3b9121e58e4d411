package loopwright.putting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The roll against the Stimpmeter's definition, Penner's range, Brede's correction and the side-hill closed form. */
class GreenRollReferenceTest {
    private static final double FOOT = 0.3048;
    private static final double RELEASE = GreenSpeed.RELEASE_METRES_PER_SECOND;

    private static RollWorkspace roll(GreenSurface surface, double stimpFeet, double vx, double vy) {
        RollWorkspace ball = new RollWorkspace(1000, 1000);
        new GreenRoll(surface, GreenSpeed.ofRollMetres(stimpFeet * FOOT)).roll(0, 0, vx, vy, ball);
        return ball;
    }

    /** USGA Stimpmeter booklet: a ball let go at 1.83 m/s rolls the green speed. */
    @ParameterizedTest
    @ValueSource(doubles = {6, 7, 8, 9, 10, 11, 12, 13, 14})
    void aBallFromTheStimpmeterRollsTheGreenSpeed(double feet) {
        // half a percent: the accuracy of the meter's own reading; ours is the step error only
        assertThat(roll(PlaneGreen.LEVEL, feet, RELEASE, 0).x).isCloseTo(feet * FOOT, withinPercentage(0.5));
    }

    /** Penner 2002, p. 85: coefficient 0.065 (fast) to 0.196 (slow); the ends lie on 12 and 4 ft, 0.131 on 6. */
    @ParameterizedTest
    @CsvSource({"12, 0.065", "6, 0.131", "4, 0.196"})
    void pennersRangeLiesOnRoundGreenSpeeds(double feet, double resistance) {
        assertThat(GreenSpeed.ofRollMetres(feet * FOOT).rollingResistance())
                .isCloseTo(resistance, withinPercentage(1)); // printed to two or three digits
    }

    /** A. D. Brede, USGA Green Section Record 28(6), 1990: S = 2 up down / (up + down). */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.02, 0.03})
    void bredesCorrectionRecoversTheLevelSpeed(double slope) {
        GreenSurface plane = new PlaneGreen(slope, 0);
        double up = roll(plane, 10, RELEASE, 0).x;
        double down = -roll(plane, 10, -RELEASE, 0).x;
        // exact for constant deceleration but for cos b (0.05 % at 3 %) and the step
        assertThat(2 * up * down / (up + down)).isCloseTo(10 * FOOT, withinPercentage(0.5));
    }

    @Test
    void twoPercentAtTenFeetRollsAsWorkedOutByHand() {
        GreenSurface plane = new PlaneGreen(0.02, 0);
        assertThat(roll(plane, 10, RELEASE, 0).x / FOOT).isCloseTo(7.970, withinPercentage(0.5));
        assertThat(-roll(plane, 10, -RELEASE, 0).x / FOOT).isCloseTo(13.426, withinPercentage(0.5));
    }

    /**
     * Struck square to the slope: x = 2 v^2 A / (4 A^2 - B^2), y = v^2 B / (4 (A^2 - B^2)); that the angle does not
     * depend on the speed and the distance grows with its square is the abstract of Cross, Eur. J. Phys. 45 (2024)
     * 035002.
     */
    @ParameterizedTest
    @CsvSource({"2.0, 3.70151, 0.49659", "3.0, 8.32839, 1.11733"})
    void sideHillPuttsStopWhereTheClosedFormSays(double speed, double along, double fall) {
        RollWorkspace ball = roll(new PlaneGreen(0, 0.02), 10, speed, 0);
        assertThat(ball.x).isCloseTo(along, withinPercentage(0.5)); // cos b and the step
        assertThat(-ball.y).isCloseTo(fall, withinPercentage(0.5));
        assertThat(-ball.y / ball.x).isCloseTo(0.13416, withinPercentage(0.5));
    }

    @Test
    void halfAgainTheSpeedRollsTwoAndAQuarterTimesAsFar() {
        GreenSurface plane = new PlaneGreen(0, 0.02);
        double ratio = roll(plane, 10, 3, 0).x / roll(plane, 10, 2, 0).x;
        assertThat(ratio).isCloseTo(2.25, withinPercentage(0.5));
    }

    /** USGA Course Rating manual's "moderately" (down twice up) and "steeply" (thrice) as slopes: 1.4 a / g / 3 and / 2. */
    @ParameterizedTest
    @CsvSource({"10, 2, 0.0261", "10, 3, 0.0392", "12, 2, 0.0218", "12, 3, 0.0327"})
    void ratingManualRatiosAreTheseSlopes(double stimp, double ratio, double slope) {
        GreenSurface plane = new PlaneGreen(slope, 0);
        double up = roll(plane, stimp, RELEASE, 0).x;
        double down = -roll(plane, stimp, -RELEASE, 0).x;
        assertThat(down / up).isCloseTo(ratio, within(0.01)); // slopes printed to three digits
    }
}
