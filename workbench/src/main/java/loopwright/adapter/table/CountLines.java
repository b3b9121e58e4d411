package loopwright.adapter.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.action.CountText;
import loopwright.action.UserFault;
import loopwright.player.BallCount;
import loopwright.player.Setting;
import loopwright.player.Zone;

/** Counted balls as sentences in a file, one a line, all of one session: "10 drives: 6 inside 30 yd, 3 right, 1 topped". */
final class CountLines {
    private CountLines() {}

    /** True if the first line that says something is such a sentence and no header row. */
    static boolean areIn(List<String> lines) {
        return lines.stream()
                .filter(line -> !CsvTable.isSkipped(line))
                .findFirst()
                .filter(CountText::isMeant)
                .isPresent();
    }

    static List<CountRow> read(Path file, List<String> lines, Setting setting) {
        List<CountRow> out = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (!CsvTable.isSkipped(lines.get(i))) {
                out.add(row(file, i + 1, lines.get(i), setting));
            }
        }
        return out;
    }

    private static CountRow row(Path file, int line, String text, Setting setting) {
        try {
            List<BallCount> counts = CountText.parse(text, setting, 0);
            Map<Zone, Integer> balls = new LinkedHashMap<>();
            counts.forEach(c -> balls.merge(c.zone(), c.balls(), Integer::sum));
            BallCount first = counts.get(0);
            return new CountRow(first.club(), first.effort(), balls, setting, file.toString(), Optional.empty());
        } catch (UserFault e) {
            throw new UserFault(file + ", line " + line + ": " + e.getMessage(), e);
        }
    }
}
