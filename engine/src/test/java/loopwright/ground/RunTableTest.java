package loopwright.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RunTableTest {

    @Test
    void readsAsTheSimulationWouldSay() {
        SplittableRandom random = new SplittableRandom(8);
        RunWorkspace scratch = new RunWorkspace();
        for (Firmness firmness : new Firmness[] {Firmness.SOFT, Firmness.ORDINARY, Firmness.FIRM}) {
            BounceAndRoll ground = new BounceAndRoll(firmness, 0.0784);
            for (Surface surface : new Surface[] {Surface.FAIRWAY, Surface.GREEN}) {
                RunTable table = new RunTable(ground, surface);
                for (int i = 0; i < 300; i++) {
                    // landings of golf: 12 to 34 m/s, 25 to 55 degrees, 100 to 900 rad/s
                    double speed = 12 + 22 * random.nextDouble();
                    double descent = Math.toRadians(25 + 30 * random.nextDouble());
                    double spin = 100 + 800 * random.nextDouble();
                    double exact = ground.planeRunMetres(new Touchdown(speed, descent, 0, spin), surface, 0, scratch);
                    // the promise of the class; the ground itself is known far less well
                    assertThat(table.runMetres(speed, descent, spin))
                            .as(
                                    "%s %s %.1f m/s %.1f deg %.0f rad/s",
                                    surface, firmness, speed, Math.toDegrees(descent), spin)
                            .isCloseTo(exact, within(0.5));
                }
            }
        }
    }
}
