package loopwright.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/** A measuring session of about 40 minutes, told in steps, and the list it is written into. */
public final class MeasuringSheet {

    /** Balls of one club and effort. */
    private record Step(int balls, String club, String effort, String how) {}

    /** Common practice, no source: enough of the driver and the 7-iron to place the bag, three wedge lengths. */
    private static final List<Step> STEPS = List.of(
            new Step(5, "7-iron", "full", "to warm up; written down all the same"),
            new Step(10, "7-iron", "full", "a new aim after every second ball"),
            new Step(12, "driver", "full", "with the whole routine before each ball"),
            new Step(6, "pitching wedge", "full", "at one flag"),
            new Step(6, "pitching wedge", "three-quarter", "hands to shoulder height"),
            new Step(6, "pitching wedge", "half", "hands to hip height"));

    /** Short shots and putts: how far off the hole in a round number of each unit, and how. */
    private record ShortStep(int balls, String club, String usual, String metric, boolean straight, String how) {
        boolean isPutt() {
            return club.equals("putt");
        }
    }

    private static final List<ShortStep> SHORT_STEPS = List.of(
            new ShortStep(6, "chip", "12", "11", false, "to one hole from %s; pace what each one leaves"),
            new ShortStep(6, "sand", "12", "11", false, "from a bunker %s off; write down fat and bladed ones"),
            new ShortStep(6, "putt", "6", "2", true, "from %s on a line that you have checked is straight"),
            new ShortStep(6, "putt", "30", "9", false, "from %s, a new line each time; pace what each one leaves"));

    private final TextFile files;

    public MeasuringSheet(TextFile files) {
        this.files = files;
    }

    private static String off(ShortStep step, ReadLengths lengths) {
        return isMetric(step, lengths) ? step.metric() + " m" : step.usual() + (step.isPutt() ? " ft" : " yd");
    }

    private static boolean isMetric(ShortStep step, ReadLengths lengths) {
        return step.isPutt() ? lengths.metricGreens() : lengths.course() == LengthUnit.METRES;
    }

    /** The session in plain sentences. */
    public List<String> description(ReadLengths lengths) {
        List<String> out = new ArrayList<>();
        out.add("Measuring session, about 40 minutes. Warm up first; stop if anything hurts, and rest between clubs.");
        out.add(
                "Never hit while anybody is in front of you or can walk into the line; leave in lightning, drink in heat.");
        out.add(
                "Pick an aim. For each ball write where it landed: how far, and how far right (+) or left (-) of the aim.");
        out.add("Write down every ball, the bad ones first of all: they decide the pattern.");
        int number = 1;
        for (Step s : STEPS) {
            out.add(String.format(
                    Locale.ROOT, "%d. %d balls, %s %s: %s.", number++, s.balls(), s.club(), s.effort(), s.how()));
        }
        for (ShortStep s : SHORT_STEPS) {
            out.add(number++ + ". " + s.balls() + " " + (s.club().equals("sand") ? "bunker shots" : s.club() + "s")
                    + " " + String.format(Locale.ROOT, s.how(), off(s, lengths)) + ".");
        }
        out.add("Fill in every row you can; rows left empty are set aside. \"fit --shots FILE\" reads all of it back.");
        return List.copyOf(out);
    }

    /** The session and its list as sheets to print and write on. */
    public Book sheets(ReadLengths lengths) {
        List<Book.Line> how = description(lengths).stream()
                .map(text -> new Book.Line(Book.Role.EXPECTATION, text))
                .toList();
        Book.Line note = new Book.Line(
                Book.Role.NOTE,
                "Carry: how far it flew, in " + lengths.course().words()
                        + ". Side: right (+) or left (-) of the aim. Write down the"
                        + " bad ones too; type the list"
                        + " into the CSV of \"player sheet --out\".");
        Book.Line left = new Book.Line(
                Book.Role.NOTE,
                "Left: how far the ball stopped from the hole, in " + (lengths.metricGreens() ? "metres" : "feet")
                        + ", 0 for one that went in. Miss: fat or thin; of a putt, the side it missed on.");
        return new Book(
                "Measuring session",
                lengths.course(),
                List.of(
                        Book.Page.of(Book.Kind.SHEET, "Measuring session", how),
                        Book.Page.of(Book.Kind.SHEET, "Where the balls landed", List.of(note), list()),
                        Book.Page.of(Book.Kind.SHEET, "What the short shots left", List.of(left), shortList(lengths))));
    }

    private static Book.Table list() {
        Map<String, Integer> balls = new LinkedHashMap<>();
        for (Step s : STEPS) {
            balls.merge(s.club() + (s.effort().equals("full") ? "" : " " + s.effort()), s.balls(), Integer::sum);
        }
        return halves("Carry and side of every ball", List.of("ball", "carry", "side"), numbered(balls));
    }

    private static Book.Table shortList(ReadLengths lengths) {
        Map<String, Integer> shots = new LinkedHashMap<>();
        for (ShortStep s : SHORT_STEPS) {
            String kind = off(s, lengths) + " " + (s.club().equals("sand") ? "bunker" : s.club());
            shots.merge(kind, s.balls(), Integer::sum);
        }
        return halves("What every short shot and putt left", List.of("shot", "left", "miss"), numbered(shots));
    }

    /** A name for every ball, by how many there are of each kind. */
    private static List<String> numbered(Map<String, Integer> balls) {
        List<String> out = new ArrayList<>();
        balls.forEach((kind, many) -> IntStream.rangeClosed(1, many).forEach(i -> out.add(kind + " " + i)));
        return out;
    }

    /** A row for every ball, with two cells to write in, in two halves beside each other. */
    private static Book.Table halves(String title, List<String> heads, List<String> balls) {
        int half = (balls.size() + 1) / 2;
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < half; i++) {
            String right = half + i < balls.size() ? balls.get(half + i) : "";
            rows.add(List.of(balls.get(i), "", "", right, "", ""));
        }
        List<String> both = new ArrayList<>(heads);
        both.addAll(heads);
        return new Book.Table(title, both, List.of(0.26, 0.12, 0.12, 0.26, 0.12, 0.12), rows);
    }

    /** The list to fill in: a row per ball; rows left empty are set aside when it is read. */
    public void write(Path file, ReadLengths lengths) {
        String far = lengths.course().sign();
        String near = lengths.metricGreens() ? "m" : "ft";
        // a column is named once: in metres everywhere shots and putts share it
        boolean shared = far.equals(near);
        StringBuilder text = new StringBuilder("club,effort,carry_" + far + ",side_" + far + ",ball,surface,to_hole_"
                + far + (shared ? "" : ",to_hole_" + near) + ",holed,leave_" + near + ",mishit,miss,drill\n");
        String none = shared ? "" : ",";
        for (Step s : STEPS) {
            for (int i = 0; i < s.balls(); i++) {
                text.append(s.club())
                        .append(',')
                        .append(s.effort())
                        .append(",,,range,mat,,,,,,")
                        .append(none)
                        .append('\n');
            }
        }
        for (ShortStep s : SHORT_STEPS) {
            String off = isMetric(s, lengths) ? s.metric() : s.usual();
            String toHole = shared ? off : s.isPutt() ? "," + off : off + ",";
            text.append(
                    (s.club() + ",,,,,," + toHole + ",,,,," + (s.straight() ? "yes" : "") + "\n").repeat(s.balls()));
        }
        files.write(file, text.toString());
    }
}
