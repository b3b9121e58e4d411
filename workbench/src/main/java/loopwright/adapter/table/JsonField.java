package loopwright.adapter.table;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import loopwright.action.UserFault;

/** A value of a JSON document that knows its file and path, so that what is wrong with it can be said. */
record JsonField(String file, String path, JsonNode node) {

    JsonField get(String name) {
        return find(name).orElseThrow(() -> fault("has no \"" + name + "\"; add it"));
    }

    Optional<JsonField> find(String name) {
        if (!node.isObject()) {
            throw fault("is " + shown() + "; an object in braces is expected");
        }
        JsonNode child = node.get(name);
        return child == null || child.isNull()
                ? Optional.empty()
                : Optional.of(new JsonField(file, path.isEmpty() ? name : path + "." + name, child));
    }

    List<JsonField> list() {
        if (!node.isArray()) {
            throw fault("is " + shown() + "; a list in square brackets is expected");
        }
        List<JsonField> out = new ArrayList<>();
        for (int i = 0; i < node.size(); i++) {
            out.add(new JsonField(file, path + "[" + i + "]", node.get(i)));
        }
        return out;
    }

    double number() {
        if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
            throw fault("is " + shown() + "; a number is expected");
        }
        return node.doubleValue();
    }

    double number(String name) {
        return get(name).number();
    }

    int whole(String name) {
        JsonField field = get(name);
        if (!field.node.isInt()) {
            throw field.fault("is " + field.shown() + "; a whole number is expected");
        }
        return field.node.intValue();
    }

    boolean flag(String name) {
        JsonField field = get(name);
        if (!field.node.isBoolean()) {
            throw field.fault("is " + field.shown() + "; true or false is expected");
        }
        return field.node.booleanValue();
    }

    String text(String name) {
        JsonField field = get(name);
        if (!field.node.isTextual()) {
            throw field.fault("is " + field.shown() + "; text in quotes is expected");
        }
        return field.node.textValue();
    }

    /** The constant whose lower-case name with hyphens is written here. */
    <E extends Enum<E>> E choice(String name, Class<E> kind) {
        String word = text(name);
        for (E e : kind.getEnumConstants()) {
            if (written(e).equals(word)) {
                return e;
            }
        }
        List<String> words = new ArrayList<>();
        for (E e : kind.getEnumConstants()) {
            words.add(written(e));
        }
        throw get(name).fault("is \"" + word + "\"; one of " + String.join(", ", words) + " is expected");
    }

    /** Builds a record; what its constructor refuses becomes a sentence with this field's place. */
    <T> T build(Function<JsonField, T> maker) {
        try {
            return maker.apply(this);
        } catch (IllegalArgumentException e) {
            throw new UserFault(where() + " cannot be used: " + e.getMessage() + ".", e);
        }
    }

    UserFault fault(String sentence) {
        return new UserFault(where() + " " + sentence + ".");
    }

    static String written(Enum<?> e) {
        return e.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private String where() {
        return path.isEmpty() ? file : file + ": " + path;
    }

    private String shown() {
        String text = node.toString();
        return text.length() > 40 ? text.substring(0, 40) + "..." : text;
    }
}
