package loopwright.drawing;

import java.util.ArrayList;
import java.util.List;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;

/** Explains how ground looks: a sample of each kind shown, height contours and the border where there are any. */
public final class GroundKey {
    public static final double ROW = 17;

    private final Course course;
    private final List<AreaKind> kinds;
    private final Extent frame;
    private final List<Mark> out = new ArrayList<>();
    private double y;

    /** @param frame whose left edge the samples keep to */
    public GroundKey(Course course, List<AreaKind> kinds, Extent frame) {
        this.course = course;
        this.kinds = List.copyOf(kinds);
        this.frame = frame;
    }

    public double height() {
        return ROW
                * (kinds.size()
                        + (course.heights().isPresent() ? 1 : 0)
                        + (course.boundary().isPresent() ? 1 : 0));
    }

    public List<Mark> marks(double top) {
        y = top;
        kinds.forEach(this::sample);
        if (course.heights().isPresent()) {
            Extent box = next();
            double middle = box.centre().y();
            out.add(Mark.drawn(
                    Pen.of(Ink.CONTOUR, 0.7).dashed(9.0, 2.5),
                    Trace.line(new Point(box.left(), middle), new Point(box.right(), middle))));
            name("height of the ground, feet");
        }
        if (course.boundary().isPresent()) {
            border();
        }
        return List.copyOf(out);
    }

    private void border() {
        Extent box = next();
        double line = box.centre().y() + 3;
        Extent beyond = new Extent(box.left() - 9, line, box.right() + 9, box.bottom() + 40);
        out.add(Mark.drawn(Pen.of(Ink.LINE, 1), Trace.line(new Point(box.left(), line), new Point(box.right(), line))));
        out.add(new Mark.Window(
                Trace.rectangle(box),
                List.of(Mark.drawn(Pen.of(Ink.LINE, 0.45), Texture.fringe(Trace.rectangle(beyond), 2.1, 4.6, true)))));
        name(course.boundaryGuessed() ? "out of bounds (guessed: map border)" : "out of bounds beyond the line");
    }

    private void sample(AreaKind kind) {
        Extent box = next();
        List<Trace> rings = List.of(Trace.rectangle(box));
        out.add(new Mark.Window(Trace.rectangle(box.grown(2)), new Lies(0.62, box.grown(3)).marks(kind, rings)));
        boolean assumed = kind == AreaKind.GREEN && course.holes().stream().anyMatch(Hole::greenAssumed);
        name(assumed ? "green (small circles: assumed)" : words(kind));
    }

    private Extent next() {
        y += ROW;
        return new Extent(frame.left() + 1, y - 9, frame.left() + 33, y + 3);
    }

    private void name(String text) {
        double room = frame.right() - frame.left() - 42;
        double size = Math.min(9.5, 9.5 * room / Face.REGULAR.width(text, 9.5));
        out.add(Mark.text(text, new Point(frame.left() + 42, y), Mark.Anchor.START, size));
    }

    private static String words(AreaKind kind) {
        return switch (kind) {
            case GREEN -> "green";
            case BUNKER -> "bunker";
            case TEE -> "tee";
            case YELLOW_PENALTY_AREA -> "penalty area, yellow stakes";
            case RED_PENALTY_AREA -> "penalty area, red stakes";
            case OUT_OF_BOUNDS -> "out of bounds";
            case FAIRWAY -> "fairway";
            case WASTE_AREA -> "waste area";
            case WOODS -> "woods";
            case DEEP_ROUGH -> "deep rough";
            case ROUGH -> "rough (bare paper)";
            case PATH -> "path";
            case ROAD -> "road";
            case BUILDING -> "building";
            case PRACTICE -> "practice ground";
        };
    }
}
