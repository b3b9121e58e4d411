package loopwright.web;

import static j2html.TagCreator.p;
import static j2html.TagCreator.text;

import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/** A sentence for the page that follows a form: said once on it, so that a reload does not send the form again. */
final class Said {
    private static final int KEPT = 100;
    private static final Map<String, String> SENTENCES = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, String> eldest) {
            return size() > KEPT;
        }
    };

    private Said() {}

    /** Sends the browser on to an address, which will say the sentence. */
    static void then(Context ctx, String sentence, String address) {
        String id = UUID.randomUUID().toString();
        synchronized (SENTENCES) {
            SENTENCES.put(id, sentence);
        }
        ctx.redirect(
                address + (address.contains("?") ? "&" : "?") + "said=" + id, io.javalin.http.HttpStatus.SEE_OTHER);
    }

    /** What was said to this page, or nothing. */
    static DomContent on(Context ctx) {
        String id = ctx.queryParam("said");
        String sentence;
        synchronized (SENTENCES) {
            sentence = id == null ? null : SENTENCES.get(id);
        }
        return sentence == null ? text("") : p(sentence).withClass("good").attr("role", "status");
    }
}
