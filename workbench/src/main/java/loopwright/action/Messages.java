package loopwright.action;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Properties;

/** Texts that people read, from one file, so that another language is another file. */
public final class Messages {
    private static final String FILE = "/loopwright/texts.properties";
    private static final Properties TEXTS = load();

    private Messages() {}

    /** The text of a key; {0}, {1} and so on are replaced by the values. */
    public static String say(String key, Object... values) {
        String text = TEXTS.getProperty(key);
        if (text == null) {
            throw new IllegalArgumentException(FILE + " has no " + key);
        }
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return text;
    }

    /** A number as {@link String#format} writes it in every language. */
    static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }

    private static Properties load() {
        Properties out = new Properties();
        try (InputStream in = Messages.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is missing");
            }
            out.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out;
    }
}
