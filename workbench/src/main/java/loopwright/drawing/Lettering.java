package loopwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Puts texts beside points and on lines where nothing else is written; they are drawn last, over all lines. */
public final class Lettering {
    /** How far aside and up or down a name may stand from its point, and in what steps it is looked for, points. */
    private static final double FARTHEST = 80;

    private static final double HIGHEST = 56;

    private static final double STEP = 6;
    /** A name goes so much farther away to have one point less of line under it. */
    private static final double WORTH_OF_CLEAR = 4;
    /** So near a name needs no leader. */
    private static final double NEAR = 12;

    private final LabelRoom room;
    private final LinesBelow below = new LinesBelow();
    private final List<Mark> texts = new ArrayList<>();

    public Lettering(Extent sheet) {
        room = new LabelRoom(sheet);
    }

    /** Keeps texts off an extent. */
    public void keepFree(Extent extent) {
        room.take(extent);
    }

    /** Keeps texts off a line, by a chain of small squares along it. */
    public void keepFree(Point from, Point to) {
        double length = from.distanceTo(to);
        double angle = from.angleTo(to);
        for (double at = 0; at <= length; at += 5) {
            Point p = from.polar(angle, at);
            room.take(new Extent(p.x() - 2.5, p.y() - 2.5, p.x() + 2.5, p.y() + 2.5));
        }
    }

    /** Names that are set {@link #apart} keep off this line where they can. */
    public void avoid(Trace line) {
        below.line(line);
    }

    /** The same for an area full of small marks. */
    public void avoidInside(List<Trace> rings) {
        below.texture(rings);
    }

    public List<Mark> texts() {
        return List.copyOf(texts);
    }

    /** A text that has to appear beside a point: where it is free, or else where it covers least. */
    public void beside(String words, Point at, double away, double size, Face face, Ink ink) {
        List<Mark.Label> candidates = candidates(words, at, away, size, face, ink);
        if (firstFree(candidates)) {
            return;
        }
        Extent best = room.takeBest(candidates.stream().map(Mark.Label::extent).toList());
        candidates.stream().filter(l -> l.extent().equals(best)).findFirst().ifPresent(texts::add);
    }

    /**
     * A text that has to appear: beside its point, or off the lines that are to be avoided and joined to it by a leader,
     * where that is not too far.
     */
    public void apart(String words, Point at, double away, double size, Face face, Ink ink) {
        Mark.Label best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Mark.Label label : apartCandidates(words, at, away, size, face, ink)) {
            double distance = at.distanceTo(nearEnd(label, at));
            if (distance < least && room.isFree(label.extent()) && isLeaderFree(at, label, away)) {
                double cost = distance + WORTH_OF_CLEAR * below.under(label.extent());
                if (cost < least) {
                    best = label;
                    least = cost;
                }
            }
        }
        if (best == null) {
            beside(words, at, away, size, face, ink);
            return;
        }
        Point end = nearEnd(best, at);
        if (at.distanceTo(end) > away + NEAR) {
            Point start = at.polar(at.angleTo(end), away - 1);
            texts.add(0, Mark.drawn(Pen.of(ink, 0.5), Trace.line(start, end)));
            texts.add(0, Mark.drawn(Pen.of(Ink.PAPER, 1.8), Trace.line(start, end)));
            keepFree(start, end);
        }
        room.take(best.extent());
        texts.add(best);
    }

    private static List<Mark.Label> apartCandidates(
            String words, Point at, double away, double size, Face face, Ink ink) {
        List<Mark.Label> out = new ArrayList<>();
        double low = size * 0.36;
        for (double aside = away; aside <= FARTHEST; aside += STEP) {
            for (double rise = 0; rise <= HIGHEST; rise += STEP) {
                for (int up = rise == 0 ? 1 : -1; up <= 1; up += 2) {
                    out.add(label(words, at.plus(aside, low + up * rise), Mark.Anchor.START, size, face, ink, 0));
                    out.add(label(words, at.plus(-aside, low + up * rise), Mark.Anchor.END, size, face, ink, 0));
                }
            }
        }
        return out;
    }

    /** Where the leader of a text ends: at the middle of its nearer side. */
    private static Point nearEnd(Mark.Label label, Point at) {
        Extent letters = label.extent();
        double y = letters.centre().y();
        return letters.left() > at.x() ? new Point(letters.left() - 1.5, y) : new Point(letters.right() + 1.5, y);
    }

    /** True if nothing that is kept free or written lies across the way to a text. */
    private boolean isLeaderFree(Point at, Mark.Label label, double away) {
        Point end = nearEnd(label, at);
        double angle = at.angleTo(end);
        double length = at.distanceTo(end);
        for (double i = away; i < length; i += 2) {
            Point p = at.polar(angle, i);
            if (!room.isFree(new Extent(p.x(), p.y(), p.x() + 1e-6, p.y() + 1e-6))) {
                return false;
            }
        }
        return true;
    }

    /** A text beside a point that is left out where nothing is free. */
    public void besideIfFree(String words, Point at, double away, double size, Face face, Ink ink) {
        firstFree(candidates(words, at, away, size, face, ink));
    }

    private static List<Mark.Label> candidates(String words, Point at, double away, double size, Face face, Ink ink) {
        List<Mark.Label> out = new ArrayList<>();
        double low = size * 0.36;
        for (double more : new double[] {0, 8, 18, 30}) {
            double gap = away + more;
            for (double rise : new double[] {0, -gap, gap}) {
                double aside = rise == 0 ? gap : gap * 0.8;
                out.add(label(words, at.plus(aside, low + rise), Mark.Anchor.START, size, face, ink, 0));
                out.add(label(words, at.plus(-aside, low + rise), Mark.Anchor.END, size, face, ink, 0));
            }
        }
        return out;
    }

    /** An upright number that breaks a line, somewhere along it. */
    public void onLine(Trace trace, String words, double size, Ink ink) {
        List<Mark.Label> candidates = new ArrayList<>();
        int n = trace.points().size();
        for (int i = 0; i < 16; i++) {
            Point p = trace.points().get(i * n / 16);
            candidates.add(label(words, p.plus(0, size * 0.36), Mark.Anchor.MIDDLE, size, Face.REGULAR, ink, 0));
        }
        firstFree(candidates);
    }

    /** A number that breaks a line and is turned with it, never upside down; the middle of the line first. */
    public void turnedOnLine(Trace trace, String words, double size, Ink ink) {
        List<Mark.Label> candidates = new ArrayList<>();
        int n = trace.points().size();
        for (int i = 0; i < 12; i++) {
            int at = (n / 2 + i * n / 12) % n;
            Point a = trace.points().get(Math.max(0, at - 2));
            Point b = trace.points().get(Math.min(n - 1, at + 2));
            double turned = upright(a.angleTo(b));
            Point p = trace.points().get(at).polar(turned + Math.PI / 2, size * 0.36);
            candidates.add(label(words, p, Mark.Anchor.MIDDLE, size, Face.REGULAR, ink, turned));
        }
        firstFree(candidates);
    }

    /** A text that runs along a straight line, on one side of it. */
    public void along(Point from, Point to, String words, double size, Ink ink) {
        double angle = from.angleTo(to);
        double turned = upright(angle);
        double length = from.distanceTo(to);
        if (length < Face.REGULAR.width(words, size) + 26) {
            return;
        }
        List<Mark.Label> candidates = new ArrayList<>();
        for (double share : new double[] {0.5, 0.36, 0.64, 0.25, 0.75}) {
            for (double aside : new double[] {-4, size + 3}) {
                Point at = from.polar(angle, share * length).polar(turned + Math.PI / 2, aside);
                candidates.add(label(words, at, Mark.Anchor.MIDDLE, size, Face.REGULAR, ink, turned));
            }
        }
        firstFree(candidates);
    }

    private static double upright(double angle) {
        return Math.cos(angle) < -1e-9 ? angle + Math.PI : angle;
    }

    private boolean firstFree(List<Mark.Label> candidates) {
        for (Mark.Label label : candidates) {
            if (room.isFree(label.extent())) {
                room.take(label.extent());
                texts.add(label);
                return true;
            }
        }
        return false;
    }

    private static Mark.Label label(
            String words, Point at, Mark.Anchor anchor, double size, Face face, Ink ink, double turned) {
        return new Mark.Label(words, at, anchor, size, face, ink, turned, true);
    }
}
