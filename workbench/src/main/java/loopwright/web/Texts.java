package loopwright.web;

import loopwright.action.Messages;

/** The texts of the pages. */
final class Texts {
    private Texts() {}

    /** As {@link Messages#say}. */
    static String say(String key, Object... values) {
        return Messages.say(key, values);
    }
}
