package loopwright.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.BiFunction;
import loopwright.action.UserFault;
import loopwright.action.Workroom;

/** Files that a person drops. Their names are shown and never used as names of files here. */
final class Uploads {
    private Uploads() {}

    /** Calls {@code use} with a temporary copy of the upload and its own name as text. */
    static <T> T with(Context ctx, Workroom room, String field, BiFunction<Path, String, T> use) {
        UploadedFile file = ctx.uploadedFile(field);
        if (file == null || file.size() == 0) {
            throw new UserFault(Texts.say("upload.none"));
        }
        try (InputStream in = file.content()) {
            return room.withFile(in.readAllBytes(), ending(file.filename()), path -> use.apply(path, name(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text of an upload. */
    static String text(Context ctx, String field) {
        UploadedFile file = ctx.uploadedFile(field);
        if (file == null || file.size() == 0) {
            throw new UserFault(Texts.say("upload.none"));
        }
        try (InputStream in = file.content()) {
            return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The name of an upload, to be shown. */
    static String nameOf(Context ctx, String field) {
        UploadedFile file = ctx.uploadedFile(field);
        return file == null ? Texts.say("upload.unnamed") : name(file);
    }

    static String name(UploadedFile file) {
        String whole = file.filename().replace('\\', '/');
        String last = whole.substring(whole.lastIndexOf('/') + 1).replaceAll("\\p{Cntrl}", "");
        return last.isBlank() ? Texts.say("upload.unnamed") : last.substring(0, Math.min(80, last.length()));
    }

    /** The ending only, of letters and digits, so that readers which look at it can. */
    private static String ending(String name) {
        String last = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return last.matches("[a-z0-9]{1,8}") ? "." + last : ".bin";
    }
}
