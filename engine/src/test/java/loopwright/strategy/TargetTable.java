package loopwright.strategy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The rows of reference/strategy/target-play.csv. */
final class TargetTable {
    private TargetTable() {}

    /** Chances that n holes take at most 4 n + d. */
    record Row(int holes, int d, double best, double risky) {}

    static List<Row> rows() {
        var file = Objects.requireNonNull(TargetTable.class.getResourceAsStream("/reference/strategy/target-play.csv"));
        try (var lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(l -> !l.startsWith("#") && !l.startsWith("holes"))
                    .map(l -> l.split(","))
                    .map(c -> new Row(
                            Integer.parseInt(c[0].trim()),
                            Integer.parseInt(c[1].trim()),
                            Double.parseDouble(c[2].trim()),
                            Double.parseDouble(c[3].trim())))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
