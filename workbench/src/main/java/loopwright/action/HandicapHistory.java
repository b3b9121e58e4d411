package loopwright.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import loopwright.action.ScoreHistoryFile.Played;
import loopwright.action.ScoreHistoryFile.Score;
import loopwright.handicap.ScoringRecord;
import org.jspecify.annotations.Nullable;

/** A player's index after every score of a record: averaging, exceptional scores, low index and caps. */
public final class HandicapHistory {
    private final ScoreHistoryFile files;
    private final HandicapSums sums;

    public HandicapHistory(ScoreHistoryFile files, HandicapSums sums) {
        this.files = files;
        this.sums = sums;
    }

    /** Works through the scores of a file, the first bad row of which is a fault. */
    public HandicapResults.Scores of(Path file) {
        ScoreHistoryFile.History history = files.read(file);
        if (!history.problems().isEmpty()) {
            int bad = history.problems().size();
            throw new UserFault(file + ", " + history.problems().get(0).sentence()
                    + (bad > 1 ? " So are " + (bad - 1) + " more rows." : ""));
        }
        if (history.scores().isEmpty()) {
            throw new UserFault(file + " has no scores; give at least one row with a date and a differential.");
        }
        ScoringRecord record = ScoringRecord.empty();
        for (Score score : history.scores()) {
            record = with(file, record, score);
        }
        return results(history.scores(), record);
    }

    private ScoringRecord with(Path file, ScoringRecord record, Score score) {
        List<ScoringRecord.Entry> before = record.entries();
        if (!before.isEmpty()
                && score.date().toEpochDay() < before.get(before.size() - 1).day()) {
            throw new UserFault(file + ", line " + score.line() + ": " + score.date()
                    + " is earlier than the row before; put the scores in the order of play.");
        }
        double differential = score.differential().orElseGet(() -> computed(file, score, record.index()));
        return record.with(score.date().toEpochDay(), differential);
    }

    private double computed(Path file, Score score, OptionalDouble index) {
        Played played = score.played().orElseThrow();
        try {
            HandicapSums.Card card =
                    new HandicapSums.Card(played.rating(), played.slope(), 4 * played.holes(), played.holes());
            return sums.differential(played.adjustedGross(), card, played.conditions(), index)
                    .differential();
        } catch (UserFault fault) {
            throw new UserFault(file + ", line " + score.line() + ": " + fault.getMessage(), fault);
        }
    }

    private static HandicapResults.Scores results(List<Score> scores, ScoringRecord record) {
        List<HandicapResults.Entry> entries = new ArrayList<>();
        for (int i = 0; i < scores.size(); i++) {
            ScoringRecord.Entry entry = record.entries().get(i);
            entries.add(new HandicapResults.Entry(
                    scores.get(i).date().toString(),
                    entry.differential(),
                    entry.adjustment(),
                    orNull(entry.low()),
                    orNull(entry.indexAfter())));
        }
        return new HandicapResults.Scores("record", orNull(record.index()), entries, HandicapResults.NOTE);
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
