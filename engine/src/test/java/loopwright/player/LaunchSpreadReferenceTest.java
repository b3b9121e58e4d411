package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.flight.Air;
import loopwright.flight.BallFlight;
import loopwright.flight.DayChange;
import loopwright.flight.DayConditions;
import loopwright.flight.FlightSetting;
import loopwright.flight.Launch;
import loopwright.flight.LaunchGrid;
import loopwright.flight.LaunchStyle;
import loopwright.flight.RealShots;
import loopwright.flight.SingleFlight;
import loopwright.flight.Wind;
import loopwright.ground.Firmness;
import loopwright.ground.Rise;
import loopwright.numerics.SpreadSequence;
import org.junit.jupiter.api.Test;

/**
 * How much solid strikes spread in length against 8 m/s, beside real ones of the same carries in still air: range shots of
 * three golfers, flown with their own ball speed and spin ({@link RealShots}).
 */
class LaunchSpreadReferenceTest {
    private static final DayConditions INTO_THE_WIND = new DayConditions(
            Air.STANDARD, Wind.steady(8, 0), Firmness.ORDINARY, DayConditions.ORDINARY_GREEN_RESISTANCE);
    /** Shorter balls than this share of the middle one are mishits. */
    private static final double SOLID_SHARE = 0.75;

    private static final int FEWEST = 30;
    private static final int LOFTS = 25;

    @Test
    void strikesSpreadIntoTheWindAsRealOnesDo() throws IOException {
        BallFlight wind =
                new BallFlight(FlightSetting.of(Air.STANDARD, Wind.steady(8, 0).along(0)));
        List<Double> shares = new ArrayList<>();
        for (Map.Entry<String, List<Launch>> group : groups().entrySet()) {
            double[] still = carries(group.getValue(), new BallFlight(FlightSetting.standard()));
            double real = deviation(carries(group.getValue(), wind));
            LaunchStyle usual = usual(group.getValue());
            double[] alone = modelled(usual, still, 0);
            double lofted = deviation(modelled(usual, still, LOFTS));
            double[] beyond = carries(group.getValue(), wind);
            for (int i = 0; i < beyond.length; i++) {
                beyond[i] -= alone[i];
            }
            double modelled = deviation(modelled(usual, new double[] {mean(still)}, LOFTS, deviation(still)));
            // twice the standard error of a deviation, 1 / sqrt(2 n) of it
            assertThat(lofted).as(group.getKey()).isCloseTo(real, within(2 * real / Math.sqrt(2.0 * still.length)));
            shares.add(modelled / deviation(beyond));
        }
        // what the carry in still air does not say, in the middle one of five groups: a tenth is what some 60 balls
        // know of
        // a deviation; one golfer's drives scatter in spin nearly twice as much as the rest, and stay twice as wide
        assertThat(shares.stream().sorted().skip(shares.size() / 2).findFirst().orElseThrow())
                .isCloseTo(1, within(0.1));
        assertThat(shares).allSatisfy(share -> assertThat(share).isBetween(0.5, 1.2));
    }

    /** The solid balls of each golfer and club with enough of them; their start and side spin do not matter here. */
    private static Map<String, List<Launch>> groups() throws IOException {
        Map<String, List<RealShots.Ball>> balls = new TreeMap<>();
        for (RealShots.Ball b : RealShots.all()) {
            balls.computeIfAbsent("golfer " + b.golfer() + ", " + b.club(), k -> new ArrayList<>())
                    .add(b);
        }
        Map<String, List<Launch>> out = new TreeMap<>();
        balls.forEach((name, all) -> {
            double middle = all.stream()
                    .mapToDouble(RealShots.Ball::carry)
                    .sorted()
                    .skip(all.size() / 2)
                    .findFirst()
                    .orElseThrow();
            List<Launch> solid = all.stream()
                    .filter(b -> b.carry() > SOLID_SHARE * middle)
                    .flatMap(b -> RealShots.findLaunch(b).stream())
                    .map(l -> l.withStart(0).withAxis(0))
                    .toList();
            if (solid.size() >= FEWEST) {
                out.put(name, solid);
            }
        });
        return out;
    }

    /** The middle launch angle of a group, and its middle spin in proportion to the speed. */
    private static LaunchStyle usual(List<Launch> group) {
        double up = group.stream().mapToDouble(Launch::launchRadians).average().orElseThrow();
        double spins = group.stream()
                .mapToDouble(l -> l.spinRadiansPerSecond() / l.speedMetresPerSecond())
                .average()
                .orElseThrow();
        return LaunchStyle.through(new Launch(50, up, 0, 50 * spins, 0));
    }

    private static double[] modelled(LaunchStyle usual, double[] still, int lofts) {
        return modelled(usual, still, lofts, deviation(still));
    }

    /** Carries into the wind of strikes that carry so far in still air: each with so many lofts, or 0: the usual one. */
    private static double[] modelled(LaunchStyle usual, double[] still, int lofts, double spread) {
        double middle = mean(still);
        ShotPattern pattern = new ShotPattern(middle, spread, 0, 0.07, 0, 5, 25, 0.7, List.of());
        LaunchGrid grid = new LaunchGrid(usual, TypicalLaunch.spread(pattern), middle);
        SingleFlight day = new SingleFlight(INTO_THE_WIND);
        int each = Math.max(1, lofts);
        double[] out = new double[still.length * each];
        DayChange change = new DayChange();
        for (int i = 0; i < out.length; i++) {
            double carry = still[i / each];
            double loft = SpreadSequence.normal((i % each + 0.5) / each);
            day.fly(grid, carry, 0, loft, 0, 0, 0, Rise.LEVEL, change);
            out[i] = carry + change.forwardMetres;
        }
        return out;
    }

    private static double[] carries(List<Launch> balls, BallFlight air) {
        return balls.stream().mapToDouble(b -> air.fly(b, 0).carryMetres()).toArray();
    }

    private static double mean(double[] values) {
        return java.util.Arrays.stream(values).average().orElseThrow();
    }

    private static double deviation(double[] values) {
        double mean = mean(values);
        return Math.sqrt(java.util.Arrays.stream(values)
                .map(v -> (v - mean) * (v - mean))
                .average()
                .orElseThrow());
    }
}
