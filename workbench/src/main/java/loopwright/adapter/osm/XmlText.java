package loopwright.adapter.osm;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The characters of an XML file in the encoding it declares, else UTF-8. Bytes that do not fit become the replacement
 * character, so that one damaged name does not cost the whole map; the XML parser's own decoder would print to the
 * terminal and give up.
 */
final class XmlText {
    private static final int HEAD_BYTES = 200;
    private static final Pattern ENCODING = Pattern.compile("^[^>]*encoding\\s*=\\s*[\"']([\\w.:-]+)[\"']");
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private XmlText() {}

    static Reader of(InputStream in) throws IOException {
        BufferedInputStream bytes = new BufferedInputStream(in, 1 << 16);
        bytes.mark(HEAD_BYTES);
        byte[] head = bytes.readNBytes(HEAD_BYTES);
        bytes.reset();
        PushbackReader text = new PushbackReader(new InputStreamReader(bytes, charset(head)));
        int first = text.read();
        if (first >= 0 && first != BYTE_ORDER_MARK) {
            text.unread(first);
        }
        return text;
    }

    private static Charset charset(byte[] head) {
        if (head.length > 1 && (head[0] & 0xFF) + (head[1] & 0xFF) == 0xFE + 0xFF && head[0] != head[1]) {
            return StandardCharsets.UTF_16;
        }
        Matcher declared = ENCODING.matcher(new String(head, StandardCharsets.ISO_8859_1));
        try {
            return declared.find() ? Charset.forName(declared.group(1)) : StandardCharsets.UTF_8;
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            return StandardCharsets.UTF_8;
        }
    }
}
