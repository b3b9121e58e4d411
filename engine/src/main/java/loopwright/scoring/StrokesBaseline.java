package loopwright.scoring;

import loopwright.units.Distance;

/** Strokes a reference player takes to hole out; what strokes gained are measured against. */
public interface StrokesBaseline {

    /** Expected strokes to hole out, 1 or more for a ball that is not in the hole. */
    double strokesToHoleOut(Lie lie, Distance toHole);

    /** True where the value is published, or interpolated between published ones; false where it is our extension. */
    boolean isPublished(Lie lie, Distance toHole);

    /** The same for one hole of a course, where its tee has a value of its own; most baselines know no holes. */
    default StrokesBaseline forHole(int number) {
        return this;
    }

    /** What to name beside numbers measured against it. */
    String name();
}
