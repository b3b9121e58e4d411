package loopwright.action;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A drill as it was played.
 *
 * @param id empty until it is kept
 * @param drill its name
 * @param score in its points
 * @param minutes spent on it
 * @param note as it was typed, with the recording of a sheet behind it
 */
public record KeptDrill(String id, LocalDate day, String drill, int score, int minutes, String note, Instant at) {
    private static final Pattern RECORDING = Pattern.compile("\\s*\\[sheet ([a-z0-9]{6,24})]$");

    static KeptDrill of(DrillLog.Playing p, String drill, Instant at) {
        String note = p.recording().isEmpty() ? p.note() : (p.note() + " [sheet " + p.recording() + "]").strip();
        return new KeptDrill("", p.day(), drill, p.score(), p.minutes(), note, at);
    }

    /** The recording of the sheet on which it was written. */
    public Optional<String> recording() {
        Matcher m = RECORDING.matcher(note);
        return m.find() ? Optional.of(m.group(1)) : Optional.empty();
    }

    /** What was typed beside the score. */
    public String words() {
        return RECORDING.matcher(note).replaceFirst("");
    }
}
