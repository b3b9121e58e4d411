package loopwright.geo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LocalFrameTest {
    private final LocalFrame frame = new LocalFrame(new LatLon(56.3, -2.8));

    @Test
    void originIsTheZeroPlace() {
        Place p = frame.toPlace(new LatLon(56.3, -2.8));
        assertThat(Math.hypot(p.x(), p.y())).isLessThan(1e-6);
    }

    @Test
    void northIsUpAndEastIsRight() {
        assertThat(frame.toPlace(new LatLon(56.31, -2.8)).y()).isGreaterThan(1000);
        assertThat(frame.toPlace(new LatLon(56.3, -2.79)).x()).isGreaterThan(500);
    }

    @Test
    void oneMinuteOfLatitudeHasItsMeridianLength() {
        // WGS 84 meridian radius at latitude 56.3: M = a(1-e^2)/(1-e^2 sin^2)^1.5 = 6379615 m near there;
        // formula from memory, computed here independently of the projection library.
        double e2 = 0.00669437999014;
        double s = Math.sin(Math.toRadians(56.305));
        double m = 6378137.0 * (1 - e2) / Math.pow(1 - e2 * s * s, 1.5);
        double expected = m * Math.toRadians(0.01);
        double ours = frame.toPlace(new LatLon(56.31, -2.8)).y();
        assertThat(ours).isCloseTo(expected, within(0.001)); // second order term of the arc, under a millimetre
    }

    @Test
    void thereAndBackReturnsThePoint() {
        LatLon there = new LatLon(56.2871, -2.8234);
        LatLon back = frame.toLatLon(frame.toPlace(there));
        assertThat(back.latitudeDegrees()).isCloseTo(there.latitudeDegrees(), within(1e-9)); // 0.1 mm
        assertThat(back.longitudeDegrees()).isCloseTo(there.longitudeDegrees(), within(1e-9));
    }
}
