package loopwright.action;

import java.time.Instant;
import java.util.Locale;

/**
 * A list of shots or putts as a player delivered it, every column of it; or his coach's drills.
 *
 * @param setting where the shots were hit if the list does not say: "range", "mat" or "course"
 */
public record KeptList(String id, Kind kind, String name, String setting, String text, Instant at) {
    /** What the rows are. */
    public enum Kind {
        SHOTS,
        PUTTS,
        /** A coach's own drills. */
        DRILLS;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
