package loopwright.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FlightWorkspaceTest {

    @Test
    void manyAtOnceAreTheSameBitsAsOneByOne() {
        SplittableRandom random = new SplittableRandom(3);
        for (Breeze breeze : new Breeze[] {Breeze.NONE, new Breeze(-6, 4)}) {
            BallFlight flight = new BallFlight(FlightSetting.standard().withBreeze(breeze));
            for (int count : new int[] {1, 5, 64, 65, 500}) {
                Launch[] launches = new Launch[count];
                FlightWorkspace balls = new FlightWorkspace(count);
                for (int i = 0; i < count; i++) {
                    launches[i] = BallFlightPropertyTest.anyLaunch(random);
                    balls.put(i, launches[i]);
                }
                flight.fly(balls, count, -3);
                for (int i = 0; i < count; i++) {
                    assertThat(balls.flight(i)).isEqualTo(flight.fly(launches[i], -3));
                }
            }
        }
    }

    @Test
    void aWorkspaceCanBeUsedAgain() {
        BallFlight flight = new BallFlight(FlightSetting.standard());
        FlightWorkspace balls = new FlightWorkspace(2);
        Launch launch = new Launch(60, 0.2, 0, 400, 0);
        balls.put(0, launch);
        balls.put(1, launch.withSpeed(30));
        flight.fly(balls, 2, 0);
        Flight first = balls.flight(0);
        balls.put(1, launch);
        flight.fly(balls, 2, 0);
        assertThat(balls.flight(0)).isEqualTo(first);
        assertThat(balls.flight(1)).isEqualTo(first);
    }
}
