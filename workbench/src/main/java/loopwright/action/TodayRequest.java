package loopwright.action;

import java.util.List;
import java.util.Optional;

/**
 * What is known of the day beside its weather.
 *
 * @param balls of the warm-up: "driver: R8 R12 L3"
 * @param unit of those numbers
 * @param playsLonger settings of the coach's dial: "3", "wet=2"
 */
public record TodayRequest(Optional<String> balls, LengthUnit unit, List<String> playsLonger) {
    /** A day like any other. */
    public static final TodayRequest USUAL = new TodayRequest(Optional.empty(), LengthUnit.YARDS, List.of());

    public TodayRequest {
        playsLonger = List.copyOf(playsLonger);
    }

    /** The dial alone. */
    TodayRequest withoutBalls() {
        return new TodayRequest(Optional.empty(), unit, playsLonger);
    }
}
