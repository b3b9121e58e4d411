package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import loopwright.action.HolePicture;
import loopwright.action.HolePicture.Alternative;
import loopwright.action.HolePicture.Room;
import loopwright.action.HolePicture.Shot;
import loopwright.action.HolePicture.StrokesField;
import loopwright.action.HolePicture.Trouble;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.Box;
import loopwright.geo.Line;
import loopwright.geo.Place;

/** Synthetic test data: a made-up plan for any hole, with everything a picture can show. No golf is computed. */
final class SyntheticPlan {
    private SyntheticPlan() {}

    static HolePicture of(Course course, int number, boolean contours) {
        Hole hole = course.getHole(number);
        var tees = course.teeSets().get(course.teeSets().size() / 2);
        Place tee = tees.getPlace(number).place();
        Line line = hole.lineFrom(tee);
        double length = line.lengthMetres();
        SplittableRandom random = new SplittableRandom(number);
        List<Shot> shots = new ArrayList<>();
        Place from = tee;
        double at = 0;
        while (at < length - 20 && shots.size() < 4) {
            double next = Math.min(length, at + (shots.isEmpty() ? 212 : 165));
            Place middle = line.placeAt(next);
            double bearing = from.bearingTo(middle);
            Place aim = middle.offset(bearing, 0, -4);
            List<Place> finishes = new ArrayList<>();
            for (int i = 0; i < 600; i++) {
                boolean mishit = random.nextDouble() < 0.12;
                double forward = mishit ? -60 + 25 * random.nextGaussian() : 11 * random.nextGaussian();
                finishes.add(middle.offset(bearing, forward, (mishit ? 18 : 12) * random.nextGaussian() + 3));
            }
            boolean last = next >= length;
            shots.add(new Shot(
                    from,
                    aim,
                    shots.isEmpty() && !last ? "driver" : last ? "8-iron" : "5-hybrid",
                    shots.isEmpty() ? "the right edge of the left fairway bunker" : "the left half of the green",
                    finishes,
                    last
                            ? Optional.empty()
                            : Optional.of(new Room(
                                    middle.offset(bearing, 0, -24),
                                    "woods",
                                    middle.offset(bearing, 0, 21),
                                    "bunker",
                                    36,
                                    55)),
                    List.of(
                            new Alternative(middle.offset(bearing, -22, 6), last ? "9-iron" : "3-wood", "+0.06"),
                            new Alternative(
                                    middle.offset(bearing, -45, -7), last ? "7-iron" : "5-wood", "the same for you"))));
            from = middle;
            at = next;
        }
        Optional<StrokesField> field = contours
                ? Optional.of(new StrokesField(
                        Box.around(line.places()).grown(60),
                        8,
                        p -> 2.1 + p.distanceTo(hole.holeLocation()) / 165 + 0.004 * line.distanceTo(p)))
                : Optional.empty();
        return new HolePicture(
                course,
                hole,
                tees.name(),
                tee,
                length,
                "4.6 (4.4 to 4.9)",
                shots,
                List.of(new Trouble(line.placeAt(length * 0.6).offset(1, 20, 20), "penalty area 9 %")),
                field,
                List.of(
                        "Par or better 31 in 100, bogey 44, double or worse 25. A penalty on 12 of 100 tries.",
                        "Against your habit (driver at the flag) this saves 0.21 strokes."));
    }
}
