package loopwright.action;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.handicap.StrokesReceived;
import loopwright.strategy.ScoreTable;

/**
 * How the round is counted, as it was typed.
 *
 * @param form strokes, net, stableford or maximum
 * @param handicap playing handicap over 18 holes, below zero for a plus handicap; net scores need one, Stableford and
 *     maximum score count from 0 without
 * @param maximum most strokes a hole counts, where it is the same on every hole; else net double bogey
 */
public record Counting(Form form, OptionalInt handicap, OptionalInt maximum) {
    public static final Counting STROKES = new Counting(Form.STROKES, OptionalInt.empty(), OptionalInt.empty());

    private static final int MOST_HANDICAP = 54;
    private static final int LOWEST_HANDICAP = -10;
    private static final int MOST_POINTS = 6;

    /** Forms of stroke play. */
    public enum Form {
        STROKES,
        NET,
        STABLEFORD,
        MAXIMUM
    }

    public Counting {
        handicap.ifPresent(Counting::checkHandicap);
        if (form == Form.NET && handicap.isEmpty()) {
            throw new UserFault(
                    "--counting net needs a playing handicap, and none was given (no player file holds one);"
                            + " add it, for example --handicap 18, or 0 for none (\"loopwright handicap playing\" works it out).");
        }
        if (maximum.isPresent() && (form != Form.MAXIMUM || maximum.getAsInt() < 3 || maximum.getAsInt() > 20)) {
            throw new UserFault(
                    "--maximum " + maximum.getAsInt()
                            + " cannot be used here; it goes with --counting maximum and lies between 3 and 20 strokes a hole.");
        }
    }

    private static void checkHandicap(int handicap) {
        if (handicap < LOWEST_HANDICAP || handicap > MOST_HANDICAP) {
            throw new UserFault("--handicap " + handicap + " is no playing handicap; give one from " + LOWEST_HANDICAP
                    + " (plus 10) to " + MOST_HANDICAP + ".");
        }
    }

    /** The table of each hole. */
    List<ScoreTable> tables(Course course, List<Hole> holes) {
        List<Integer> received = received(course, holes);
        List<ScoreTable> out = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            out.add(table(holes.get(i).par(), received.get(i)));
        }
        return out;
    }

    private ScoreTable table(int par, int received) {
        return switch (form) {
            case STROKES -> ScoreTable.strokes();
            case NET -> ScoreTable.net(received);
            case STABLEFORD -> ScoreTable.stableford(par, received);
            case MAXIMUM -> ScoreTable.maximum(maximum.orElse(StrokesReceived.netDoubleBogey(par, received)), received);
        };
    }

    private List<Integer> received(Course course, List<Hole> holes) {
        if (handicap.orElse(0) == 0) {
            return Collections.nCopies(holes.size(), 0);
        }
        List<Integer> indexes = new ArrayList<>();
        for (Hole hole : course.holes()) {
            indexes.add(hole.strokeIndex()
                    .orElseThrow(() -> new UserFault("Hole " + hole.number() + " of " + course.name()
                            + " has no stroke index, so nobody knows where the strokes of --handicap fall; add it to the"
                            + " map (tag handicap), or leave --handicap away.")));
        }
        if (indexes.stream().distinct().count() != indexes.size()) {
            throw new UserFault("Two holes of " + course.name() + " have the same stroke index, so --handicap cannot be"
                    + " spread over them; correct the map (tag handicap).");
        }
        List<Integer> all = StrokesReceived.perHole(handicap.getAsInt(), indexes);
        return holes.stream().map(h -> all.get(course.holes().indexOf(h))).toList();
    }

    /** The most the round's sum may be: points count below zero. */
    public int limit(int target) {
        return form == Form.STABLEFORD ? -target : target;
    }

    /** "79 or better", "72 net or better", "36 points or more". */
    public String words(int target) {
        return switch (form) {
            case STROKES, MAXIMUM -> target + " or better";
            case NET -> target + " net or better";
            case STABLEFORD -> target + (target == 1 ? " point or more" : " points or more");
        };
    }

    /** What a number of this count is, after the number: "" for strokes, " net", " points". */
    public String unit() {
        return switch (form) {
            case STROKES, MAXIMUM -> "";
            case NET -> " net";
            case STABLEFORD -> " points";
        };
    }

    void checkTarget(int target, int holes) {
        boolean points = form == Form.STABLEFORD;
        int least = points ? 1 : form == Form.NET ? holes : 2 * holes;
        int most = points ? MOST_POINTS * holes : 150 * holes / 18;
        if (target < least || target > most) {
            throw new UserFault("--target " + target + " is no " + (points ? "number of points" : "score") + " for "
                    + holes + (holes == 1 ? " hole" : " holes") + "; the nearest is "
                    + Math.max(least, Math.min(most, target))
                    + ", the range " + least + " to " + most + (points ? " points." : "."));
        }
    }
}
