package loopwright.adapter.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.geo.LatLon;
import loopwright.scoring.HoleCounts;
import loopwright.scoring.HoleEnd;
import loopwright.scoring.HoleMark;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.Lie;
import loopwright.scoring.RoundRecord;
import loopwright.scoring.ShotRecord;
import loopwright.scoring.Stroke;
import loopwright.units.Distance;

/** Rounds as the text of a table that {@link RoundCsv} reads back to the same rounds. */
final class RoundCsvText {
    private static final List<String> ROUND =
            List.of("round", "date", "course", "tees", "format", "lesson", "hole", "par", "length_m", "score");
    private static final List<String> ENDS = List.of("conceded", "picked_up");
    private static final List<String> COUNTS =
            List.of("tee_ball", "approach_club", "approach", "penalties", "chips", "first_putt_m", "putts");
    private static final List<String> SHOTS = List.of(
            "club",
            "lie",
            "to_hole_m",
            "penalty",
            "lat",
            "lon",
            "situation",
            "meant_club",
            "aim_lat",
            "aim_lon",
            "meant_lie",
            "as_meant");
    private static final List<HoleMark> MARKS = List.of(HoleMark.values());

    private final StringWriter text = new StringWriter();
    private final CsvWriter writer =
            CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text);

    private RoundCsvText() {}

    static String of(List<RoundRecord> rounds) {
        long ofShots = rounds.stream()
                .flatMap(r -> r.holes().stream())
                .filter(h -> !h.shots().isEmpty())
                .count();
        long holes = rounds.stream().mapToLong(r -> r.holes().size()).sum();
        if (ofShots != 0 && ofShots != holes) {
            throw new IllegalArgumentException("a table holds whole holes or strokes, not both");
        }
        return new RoundCsvText().write(rounds, ofShots > 0);
    }

    private String write(List<RoundRecord> rounds, boolean ofShots) {
        List<String> header = new ArrayList<>(ROUND);
        header.addAll(ENDS);
        MARKS.forEach(mark -> header.add(mark.name().toLowerCase(Locale.ROOT)));
        header.addAll(ofShots ? SHOTS : COUNTS);
        writer.writeRecord(header);
        for (RoundRecord round : rounds) {
            round.holes().forEach(hole -> write(round, hole, ofShots));
        }
        try {
            writer.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a text in memory cannot fail
        }
        return text.toString();
    }

    private void write(RoundRecord round, HoleRecord hole, boolean ofShots) {
        if (!ofShots) {
            row(round, hole, hole.end(), counts(hole.counts()));
            return;
        }
        int last = hole.shots().size() - 1;
        for (int i = 0; i <= last; i++) {
            boolean ends = i == last && hole.end() == HoleEnd.PICKED_UP;
            row(
                    round,
                    hole,
                    ends ? HoleEnd.PICKED_UP : HoleEnd.HOLED,
                    shot(hole.shots().get(i)));
        }
        if (hole.end() == HoleEnd.CONCEDED) {
            row(
                    round,
                    hole,
                    HoleEnd.CONCEDED,
                    hole.conceded().map(RoundCsvText::given).orElseThrow());
        }
    }

    private void row(RoundRecord round, HoleRecord hole, HoleEnd end, List<String> rest) {
        List<String> cells = new ArrayList<>(List.of(
                round.name(),
                round.date().orElse(""),
                round.course().orElse(""),
                round.tees().orElse(""),
                round.format().orElse(""),
                yes(round.lesson()),
                String.valueOf(hole.number()),
                text(hole.par()),
                metres(hole.length()),
                text(hole.writtenScore()),
                yes(end == HoleEnd.CONCEDED),
                yes(end == HoleEnd.PICKED_UP)));
        MARKS.forEach(mark -> cells.add(yes(hole.marks().contains(mark))));
        cells.addAll(rest);
        writer.writeRecord(cells);
    }

    private static List<String> counts(HoleCounts counts) {
        return List.of(
                counts.teeBall().map(b -> word(RoundWords.TEE_BALLS, b)).orElse(""),
                counts.approachClub().orElse(""),
                counts.approach().map(a -> word(RoundWords.APPROACHES, a)).orElse(""),
                text(counts.penaltyStrokes()),
                text(counts.chips()),
                metres(counts.firstPutt()),
                text(counts.putts()));
    }

    private static List<String> shot(ShotRecord shot) {
        return List.of(
                shot.club().orElse(""),
                lie(shot.lie()),
                metres(Optional.of(shot.toHole())),
                shot.penaltyStrokes() == 0 ? "" : String.valueOf(shot.penaltyStrokes()),
                latitude(shot.place()),
                longitude(shot.place()),
                shot.situation().map(x -> word(RoundWords.SITUATIONS, x)).orElse(""),
                shot.intent().club().orElse(""),
                latitude(shot.intent().aim()),
                longitude(shot.intent().aim()),
                shot.intent().finish().map(RoundCsvText::lie).orElse(""),
                shot.intent().struckAsMeant().map(yes -> yes ? "yes" : "no").orElse(""));
    }

    private static String latitude(Optional<LatLon> place) {
        return place.map(p -> degrees(p.latitudeDegrees())).orElse("");
    }

    private static String longitude(Optional<LatLon> place) {
        return place.map(p -> degrees(p.longitudeDegrees())).orElse("");
    }

    private static List<String> given(Stroke putt) {
        return List.of("", lie(putt.lie()), metres(Optional.of(putt.toHole())), "", "", "", "", "", "", "", "", "");
    }

    private static String lie(Lie lie) {
        return lie.name().toLowerCase(Locale.ROOT);
    }

    /** The longest word for a meaning is the one people read. */
    private static <T> String word(Map<String, T> words, T meaning) {
        return words.entrySet().stream()
                .filter(e -> e.getValue().equals(meaning))
                .map(Map.Entry::getKey)
                .max(Comparator.comparingInt(String::length))
                .orElseThrow();
    }

    private static String yes(boolean value) {
        return value ? "yes" : "";
    }

    private static String text(OptionalInt value) {
        return value.isPresent() ? String.valueOf(value.getAsInt()) : "";
    }

    /** To the tenth of a millimetre, far below what anybody paces. */
    private static String metres(Optional<Distance> distance) {
        return distance.map(d -> decimal("%.4f", d.metres())).orElse("");
    }

    /** Nine decimals of a degree are a tenth of a millimetre. */
    private static String degrees(double value) {
        return decimal("%.9f", value);
    }

    private static String decimal(String format, double value) {
        return String.format(Locale.ROOT, format, value).replaceAll("\\.?0+$", "");
    }
}
