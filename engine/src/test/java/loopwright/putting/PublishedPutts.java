package loopwright.putting;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Reads the published counts of putts; two comment lines and a header precede the rows. */
final class PublishedPutts {
    private PublishedPutts() {}

    static List<MadePutts> read(String file) {
        String path = "/reference/putting/" + file;
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(PublishedPutts.class.getResourceAsStream(path), path),
                StandardCharsets.UTF_8))) {
            return in.lines().skip(3).map(PublishedPutts::row).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static MadePutts row(String line) {
        String[] cells = line.split(",", -1);
        return new MadePutts(
                Double.parseDouble(cells[0]) * Anchors.FOOT, Integer.parseInt(cells[1]), Integer.parseInt(cells[2]));
    }
}
