package loopwright.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** Every text of the pages, from one file, so that another language is another file. */
final class Texts {
    private static final Properties TEXTS = load();

    private Texts() {}

    /** The text of a key; {0}, {1} and so on are replaced by the values. */
    static String say(String key, Object... values) {
        String text = TEXTS.getProperty(key);
        if (text == null) {
            throw new IllegalArgumentException("texts.properties has no " + key);
        }
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return text;
    }

    private static Properties load() {
        Properties out = new Properties();
        try (InputStream in = Texts.class.getResourceAsStream("texts.properties")) {
            if (in == null) {
                throw new IllegalStateException("texts.properties is missing");
            }
            out.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out;
    }
}
