package loopwright.adapter.osm;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Damages a file in one of the ways in which files are damaged, or attacked; the same seed gives the same damage. */
final class FileMutator {
    private static final Pattern QUOTED = Pattern.compile("\"[^\"]{0,40}\"");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final String[] NUMBERS = {
        "0",
        "-1",
        "NaN",
        "1e309",
        "-1e9",
        "2147483648",
        "9223372036854775807",
        "99999999999999999999",
        "0.0000000001",
        ""
    };

    private final SplittableRandom random;

    FileMutator(long seed) {
        random = new SplittableRandom(seed);
    }

    byte[] mutated(byte[] file) {
        byte[] out = file;
        int times = 1 + random.nextInt(3);
        for (int i = 0; i < times && out.length > 1; i++) {
            out = once(out);
        }
        return out;
    }

    private byte[] once(byte[] file) {
        return switch (random.nextInt(7)) {
            case 0 -> flipped(file);
            case 1 -> Arrays.copyOf(file, random.nextInt(file.length));
            case 2 -> swapped(file, QUOTED);
            case 3 -> without(file);
            case 4 -> doubled(file);
            case 5 -> replacedNumber(file);
            default -> swapped(file, NUMBER);
        };
    }

    private byte[] flipped(byte[] file) {
        byte[] out = file.clone();
        int flips = 1 + random.nextInt(20);
        for (int i = 0; i < flips; i++) {
            out[random.nextInt(out.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return out;
    }

    private byte[] without(byte[] file) {
        int from = random.nextInt(file.length);
        int to = Math.min(file.length, from + 1 + random.nextInt(200));
        byte[] out = new byte[file.length - (to - from)];
        System.arraycopy(file, 0, out, 0, from);
        System.arraycopy(file, to, out, from, file.length - to);
        return out;
    }

    private byte[] doubled(byte[] file) {
        int from = random.nextInt(file.length);
        int to = Math.min(file.length, from + 1 + random.nextInt(400));
        byte[] out = new byte[file.length + to - from];
        System.arraycopy(file, 0, out, 0, to);
        System.arraycopy(file, from, out, to, file.length - from);
        return out;
    }

    /** Two matches change places; in a binary file there may be none. */
    private byte[] swapped(byte[] file, Pattern pattern) {
        String text = new String(file, StandardCharsets.ISO_8859_1);
        Matcher a = find(text, pattern);
        Matcher b = find(text, pattern);
        if (a == null || b == null || a.end() > b.start()) {
            return file;
        }
        String out = text.substring(0, a.start())
                + b.group()
                + text.substring(a.end(), b.start())
                + a.group()
                + text.substring(b.end());
        return out.getBytes(StandardCharsets.ISO_8859_1);
    }

    private byte[] replacedNumber(byte[] file) {
        String text = new String(file, StandardCharsets.ISO_8859_1);
        Matcher m = find(text, NUMBER);
        if (m == null) {
            return file;
        }
        String out = text.substring(0, m.start()) + NUMBERS[random.nextInt(NUMBERS.length)] + text.substring(m.end());
        return out.getBytes(StandardCharsets.ISO_8859_1);
    }

    private @org.jspecify.annotations.Nullable Matcher find(String text, Pattern pattern) {
        Matcher m = pattern.matcher(text);
        return m.find(random.nextInt(text.length())) ? m : null;
    }
}
