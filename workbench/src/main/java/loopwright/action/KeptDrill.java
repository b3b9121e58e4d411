package loopwright.action;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.practice.Skill;

/**
 * A drill as it was played, or a block of a week that was ticked: time on a skill without a score.
 *
 * @param id empty until it is kept
 * @param drill its name; of a block "block " and the skill as it is typed
 * @param score in its points; 0 of a block
 * @param minutes spent on it
 * @param note as it was typed, with the recording of a sheet behind it
 */
public record KeptDrill(String id, LocalDate day, String drill, int score, int minutes, String note, Instant at) {
    private static final Pattern RECORDING = Pattern.compile("\\s*\\[sheet ([a-z0-9]{6,24})]$");

    /** No drill has a space in its name. */
    private static final String BLOCK = "block ";

    static KeptDrill of(DrillLog.Playing p, String drill, Instant at) {
        String note = p.recording().isEmpty() ? p.note() : (p.note() + " [sheet " + p.recording() + "]").strip();
        return new KeptDrill("", p.day(), drill, p.score(), p.minutes(), note, at);
    }

    static KeptDrill of(DrillLog.Block b, Instant at) {
        return of(
                new DrillLog.Playing(b.recording(), b.day(), "", 0, b.minutes(), ""),
                BLOCK + PracticeWords.typed(b.skill()),
                at);
    }

    /** The skill of a block; empty for a drill. */
    public Optional<Skill> block() {
        return drill.startsWith(BLOCK) ? PracticeWords.findSkill(drill.substring(BLOCK.length())) : Optional.empty();
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
