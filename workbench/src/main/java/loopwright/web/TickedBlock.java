package loopwright.web;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import loopwright.action.DrillLog;
import loopwright.action.KeptDrill;
import loopwright.action.PracticeChoice;
import loopwright.action.PracticeWords;
import loopwright.action.UserFault;
import loopwright.practice.PracticeWeek;

/** A block of a week of practice as the value of its tick: number, skill, minutes, and its drill with the drill's minutes. */
final class TickedBlock {
    private static final int RECORDING = 20;
    private static final int WEEK = 7;
    private static final String VALUE = "\\d{1,3}\\.[a-z-]+\\.\\d{1,3}(\\.[a-z0-9-]+\\.\\d{1,3})?";

    private TickedBlock() {}

    static String value(int number, PracticeWeek.Block block) {
        return number + "." + PracticeWords.typed(block.skill()) + "." + block.minutes()
                + block.drill().map(d -> "." + d.name() + "." + d.minutes()).orElse("");
    }

    /**
     * What was ticked; the same block of the same plan counts once in a calendar week, and the minutes of a drill that was
     * logged in the last seven days count with its score.
     */
    static List<DrillLog.Block> read(
            List<String> values, PracticeChoice choice, List<KeptDrill> kept, LocalDate today) {
        List<DrillLog.Block> out = new ArrayList<>();
        for (String value : values) {
            if (!value.matches(VALUE)) {
                throw new UserFault(Texts.say("practice.noBlock", value));
            }
            String[] part = value.split("\\.", -1);
            int minutes = Integer.parseInt(part[2]);
            if (part.length > 3 && isLogged(part[3], kept, today)) {
                minutes -= Integer.parseInt(part[4]);
            }
            if (minutes > 0) {
                out.add(new DrillLog.Block(
                        recording(choice, today, part[0]),
                        today,
                        PracticeWords.findSkill(part[1])
                                .orElseThrow(() -> new UserFault(Texts.say("practice.noBlock", value))),
                        minutes));
            }
        }
        return out;
    }

    private static boolean isLogged(String drill, List<KeptDrill> kept, LocalDate today) {
        return kept.stream().anyMatch(k -> k.drill().equals(drill) && k.day().isAfter(today.minusDays(WEEK)));
    }

    private static String recording(PracticeChoice choice, LocalDate today, String number) {
        String week = today.get(IsoFields.WEEK_BASED_YEAR) + "." + today.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
        return UUID.nameUUIDFromBytes((choice.key() + " " + week + " " + number).getBytes(StandardCharsets.UTF_8))
                .toString()
                .replace("-", "")
                .substring(0, RECORDING);
    }
}
