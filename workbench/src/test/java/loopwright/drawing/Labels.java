package loopwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Finds the texts of a drawing and where they cover each other. */
public final class Labels {
    private Labels() {}

    public static List<Mark.Label> of(List<Mark> marks) {
        List<Mark.Label> out = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Label label) {
                out.add(label);
            } else if (mark instanceof Mark.Window window) {
                out.addAll(of(window.inside()));
            } else if (mark instanceof Mark.Tagged tagged) {
                out.addAll(of(tagged.inside()));
            } else if (mark instanceof Mark.Moved moved) {
                of(moved.inside()).forEach(l -> out.add(l.moved(moved.right(), moved.down())));
            }
        }
        return out;
    }

    /** Pairs that share more than a hair (extents of letters are rectangles, generous by a point). */
    public static List<String> listOverlaps(List<Mark.Label> labels) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            for (int j = i + 1; j < labels.size(); j++) {
                Extent a = labels.get(i).extent();
                Extent b = labels.get(j).extent();
                if (a.grown(-0.5).overlaps(b.grown(-0.5))) {
                    out.add(labels.get(i).text() + " / " + labels.get(j).text());
                }
            }
        }
        return out;
    }
}
