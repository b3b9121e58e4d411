package loopwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Puts texts beside points and on lines where nothing else is written; they are drawn last, over all lines. */
public final class Lettering {
    private final LabelRoom room;
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
