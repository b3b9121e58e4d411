package loopwright.putting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The published fits of the Stan case study (golf putting), tightened where the estimate is deterministic: the
 * decimals beyond the printed ones come from an independent maximisation of the same likelihood on the same counts.
 */
class MakeCurveFitReferenceTest {
    private final List<MadePutts> old = PublishedPutts.read("berry-1996-golf-data.csv");
    private final List<MadePutts> recent = PublishedPutts.read("broadie-2018-golf-data-new.csv");

    @Test
    void theCountsAreAllThere() {
        assertThat(old.stream().mapToInt(MadePutts::tries).sum()).isEqualTo(5_988);
        assertThat(old.stream().mapToInt(MadePutts::made).sum()).isEqualTo(3_390);
        assertThat(recent.stream().mapToInt(MadePutts::tries).sum()).isEqualTo(1_253_196);
        assertThat(recent.stream().mapToInt(MadePutts::made).sum()).isEqualTo(766_741);
    }

    @Test
    void logisticOnTheOldCounts() {
        MakeCurveFit fit = MakeCurveFit.binomial(MakeCurve.LOGISTIC, old, 1, -0.1);
        assertThat(fit.value(0)).isCloseTo(2.23121, withinPercentage(0.1));
        assertThat(fit.value(1)).isCloseTo(-0.255692, withinPercentage(0.1));
        // log likelihood without its constant; the difference is quadratic in the parameters' error
        assertThat(fit.negativeLogLikelihood()).isCloseTo(3020.155, within(0.001));
    }

    @Test
    void directionOnlyOnTheOldCounts() {
        MakeCurveFit fit = MakeCurveFit.binomial(MakeCurve.ANGLE, old, 0.05);
        assertThat(Math.toDegrees(fit.value(0))).isCloseTo(1.52667, withinPercentage(0.1));
        assertThat(fit.negativeLogLikelihood()).isCloseTo(2922.639, within(0.001));
    }

    @Test
    void directionAndPaceOnTheRecentCounts() {
        MakeCurveFit fit = MakeCurveFit.withExcess(MakeCurve.ANGLE_AND_PACE, recent, 0.03, 0.1);
        // half a percent: Stan's own posterior spread is 0.6 %
        assertThat(Math.toDegrees(fit.value(0))).isCloseTo(1.0200, withinPercentage(0.5));
        assertThat(fit.value(1)).isCloseTo(0.08007, withinPercentage(0.5));
        // printed as 0.0028 at best
        assertThat(fit.excess()).isCloseTo(0.00277, within(0.00005));
        assertThat(greatestResidual(fit, recent)).isLessThanOrEqualTo(0.010);
    }

    @Test
    void theTextsParametersMeetEveryBinWithinTwoPoints() {
        double squares = 0;
        for (MadePutts putts : recent) {
            double miss = MakeCurve.ANGLE_AND_PACE.at(putts.metres(), Math.toRadians(1.0), 0.08) - putts.rate();
            // the text rounds both parameters to one digit: its own misfit is 1.7 points at worst
            assertThat(miss).as("at %s m", putts.metres()).isCloseTo(0, within(0.02));
            squares += miss * miss;
        }
        assertThat(Math.sqrt(squares / recent.size())).isLessThan(0.007);
    }

    private static double greatestResidual(MakeCurveFit fit, List<MadePutts> putts) {
        return putts.stream()
                .mapToDouble(p -> Math.abs(fit.at(p.metres()) - p.rate()))
                .max()
                .orElseThrow();
    }
}
