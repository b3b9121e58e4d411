package loopwright.action;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is known of the day beside its weather.
 *
 * @param balls of the warm-up: "driver: R8 R12 L3"
 * @param unit of those numbers
 * @param playsLonger settings of the coach's dial: "3", "wet=2"
 */
public record TodayRequest(Optional<String> balls, LengthUnit unit, List<String> playsLonger) {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,3}(?:\\.\\d)?");
    /** The balls of a club, which follow its colon up to the next club or line: a club's own number stays. */
    private static final Pattern BALLS = Pattern.compile(":[^;\\r\\n]*");

    /** A day like any other. */
    public static final TodayRequest USUAL = new TodayRequest(Optional.empty(), LengthUnit.YARDS, List.of());

    public TodayRequest {
        playsLonger = List.copyOf(playsLonger);
    }

    /** The balls with their numbers in another unit, to a tenth of it. */
    public Optional<String> ballsIn(LengthUnit reader) {
        return reader == unit
                ? balls
                : balls.map(text -> BALLS.matcher(text)
                        .replaceAll(club -> Matcher.quoteReplacement(
                                NUMBER.matcher(club.group()).replaceAll(number -> inUnit(number.group(), reader)))));
    }

    private String inUnit(String number, LengthUnit reader) {
        return BigDecimal.valueOf(Double.parseDouble(number) * unit.inMetres() / reader.inMetres())
                .setScale(1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** The dial alone. */
    TodayRequest withoutBalls() {
        return new TodayRequest(Optional.empty(), unit, playsLonger);
    }
}
