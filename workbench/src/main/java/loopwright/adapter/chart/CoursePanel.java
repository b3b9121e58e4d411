package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import loopwright.action.LengthUnit;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeeSet;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Furniture;
import loopwright.drawing.GroundKey;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Paragraph;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.SheetView;
import loopwright.drawing.Trace;

/** The panel beside the chart of a course: name, table of holes, key to the textures, scale and north. */
final class CoursePanel {
    private static final double ROW = 12.6;
    private static final int MOST_SETS = 5;

    private final Course course;
    private final LengthUnit lengths;
    private final Extent frame;
    private final List<Mark> out = new ArrayList<>();
    private double y;

    CoursePanel(Course course, LengthUnit lengths, Extent frame) {
        this.course = course;
        this.lengths = lengths;
        this.frame = frame;
    }

    /** Sheet height that the panel asks for. */
    static double height(Course course) {
        return 52
                + 2 * 26
                + 46
                + (course.holes().size() + 3) * ROW
                + (kinds(course).size() + 3) * GroundKey.ROW
                + 110;
    }

    List<Mark> marks(SheetView view, int scale) {
        y = frame.top();
        title();
        table();
        key();
        foot(view, scale);
        return List.copyOf(out);
    }

    private void title() {
        y += 18;
        out.add(fitted(course.name(), 19));
        y += 17;
        String tees = course.teeSets().size() == 1
                ? "one set of tees"
                : course.teeSets().size() + " sets of tees";
        say(course.holes().size() + " holes, par " + course.par() + ", " + tees + ", " + lengths.words(), 10, Ink.LINE);
        unsurveyed();
        y += 8;
    }

    /** An empty map is not an open hole: every output says which holes nobody has looked at. */
    private void unsurveyed() {
        List<String> numbers = course.holes().stream()
                .filter(h -> !h.survey().complete())
                .map(h -> Integer.toString(h.number()))
                .toList();
        if (numbers.isEmpty()) {
            return;
        }
        String which = numbers.size() == course.holes().size() ? "all holes" : "holes " + String.join(", ", numbers);
        Paragraph text = Paragraph.of("unsurveyed: " + which, frame.width() - 18, 10, Face.BOLD);
        out.addAll(Furniture.beware(new Point(frame.left() + 6, y + 12), 6));
        out.addAll(text.marks(new Point(frame.left() + 18, y + 4), Ink.BEWARE));
        y += text.height() + 4;
    }

    private Mark fitted(String text, double size) {
        double width = Face.BOLD.width(text, size);
        double fit = width <= frame.width() ? size : Math.max(9, size * frame.width() / width);
        return Mark.text(text, new Point(frame.left(), y), Mark.Anchor.START, fit, Face.BOLD, Ink.LINE);
    }

    private void say(String text, double size, Ink ink) {
        out.add(Mark.text(text, new Point(frame.left(), y), Mark.Anchor.START, size, Face.REGULAR, ink));
    }

    /** Holes down, sets of tees across. */
    private void table() {
        List<TeeSet> sets = shownSets();
        y += ROW;
        cell("hole", 22, Face.ITALIC);
        cell("par", 48, Face.ITALIC);
        double columns = (frame.width() - 52) / Math.max(1, sets.size());
        for (int i = 0; i < sets.size(); i++) {
            cell(shortened(sets.get(i).name(), columns - 5), 52 + (i + 1) * columns, Face.ITALIC);
        }
        rule(4);
        double[] sums = new double[sets.size()];
        boolean anyBorrowed = false;
        for (Hole hole : course.holes()) {
            y += ROW;
            cell(Integer.toString(hole.number()), 22, Face.BOLD);
            cell(Integer.toString(hole.par()), 48, Face.REGULAR);
            for (int i = 0; i < sets.size(); i++) {
                if (sets.get(i).placeByHole().containsKey(hole.number())) {
                    double metres = course.lengthMetres(hole, sets.get(i));
                    sums[i] += metres;
                    boolean borrowed =
                            sets.get(i).getPlace(hole.number()).standsIn().isPresent();
                    cell(length(metres), 52 + (i + 1) * columns, borrowed ? Face.ITALIC : Face.REGULAR);
                    anyBorrowed |= borrowed;
                }
            }
        }
        rule(4);
        y += ROW;
        cell("all", 22, Face.BOLD);
        cell(Integer.toString(course.par()), 48, Face.BOLD);
        for (int i = 0; i < sums.length; i++) {
            cell(length(sums[i]), 52 + (i + 1) * columns, Face.BOLD);
        }
        if (anyBorrowed) {
            y += ROW;
            say("Slanted: another set's tee stands in.", 9, Ink.LINE);
        }
        y += 6;
    }

    private List<TeeSet> shownSets() {
        return course.teeSets().subList(0, Math.min(MOST_SETS, course.teeSets().size()));
    }

    private static String shortened(String name, double width) {
        String text = name;
        while (text.length() > 1 && Face.ITALIC.width(text, 9) > width) {
            text = text.substring(0, text.length() - 1);
        }
        return text;
    }

    private String length(double metres) {
        return String.format(Locale.ROOT, "%,d", lengths.whole(metres));
    }

    private void cell(String text, double right, Face face) {
        out.add(Mark.text(text, new Point(frame.left() + right, y), Mark.Anchor.END, 9, face, Ink.LINE));
    }

    private void rule(double below) {
        double at = y + below;
        out.add(Mark.drawn(
                Pen.of(Ink.SOFT, 0.5), Trace.line(new Point(frame.left(), at), new Point(frame.right(), at))));
        y = at;
    }

    private void key() {
        GroundKey key = new GroundKey(course, kinds(course), frame);
        out.addAll(key.marks(y + 8));
        y += 8 + key.height();
    }

    private void foot(SheetView view, int scale) {
        double bottom = frame.bottom();
        out.addAll(Furniture.scaleBar(
                new Point(frame.left() + 8, bottom - 26),
                view.pointsPerMetre(),
                140,
                lengths.inMetres(),
                lengths.sign()));
        out.add(Mark.text(
                "1:" + String.format(Locale.ROOT, "%,d", scale) + " when printed at full size",
                new Point(frame.left(), bottom - 4),
                Mark.Anchor.START,
                8.5,
                Face.ITALIC,
                Ink.SOFT));
        out.addAll(Furniture.northArrow(new Point(frame.right() - 16, bottom - 40), 52, view.up()));
    }

    private static List<AreaKind> kinds(Course course) {
        TreeSet<AreaKind> kinds = new TreeSet<>();
        course.areas().stream().map(Area::kind).forEach(kinds::add);
        return List.copyOf(kinds);
    }
}
