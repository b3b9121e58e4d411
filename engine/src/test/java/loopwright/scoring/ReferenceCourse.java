package loopwright.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.units.Distance;

/**
 * The course on which the realism of invented players is checked: par 72, 6,350 yd (the middle of the 6,000 to 6,700 yd of the
 * check), straight level holes. Its numbers were fixed before any result on it was known and are not to be touched: a parkland
 * corridor as common practice has it (no source).
 *
 * <p>Fairways 32 yd wide from 140 yd to the green, rough, woods from 32 yd off the line outward on both sides, greens 28 yd across
 * (5,500 sq ft) with two bunkers and the hole 5 yd off the middle, a fairway bunker beside the line at 230 yd, the course's boundary
 * 60 yd off the line on one side. The open course is the same without woods and with the boundary 200 yd away. Every hole is a
 * course of its own, so that holes do not meet.
 */
final class ReferenceCourse {
    private static final int[] PAR = {4, 5, 4, 3, 4, 4, 3, 4, 5, 4, 4, 3, 5, 4, 4, 3, 5, 4};
    private static final double[] YARDS = {
        360, 500, 390, 160, 325, 420, 140, 350, 515, 380, 310, 195, 485, 405, 340, 175, 530, 370
    };

    private ReferenceCourse() {}

    /** One hole of it, and the tee it is played from. */
    record Ground(Course course, Hole hole, Place tee) {}

    /** All holes, every one's length multiplied. */
    static List<Ground> holes(double lengthFactor, boolean open) {
        List<Ground> out = new ArrayList<>();
        for (int i = 0; i < PAR.length; i++) {
            out.add(hole(i, YARDS[i] * lengthFactor, open));
        }
        return out;
    }

    static double totalYards() {
        double sum = 0;
        for (double yards : YARDS) {
            sum += yards;
        }
        return sum;
    }

    private static Ground hole(int index, double yards, boolean open) {
        double side = index % 2 == 0 ? 1 : -1;
        List<Area> areas = new ArrayList<>();
        areas.add(Area.of("tee", AreaKind.TEE, box(-5, -6, 5, 6)));
        areas.add(Area.of("fairway", AreaKind.FAIRWAY, box(-16, PAR[index] == 3 ? yards - 30 : 140, 16, yards)));
        areas.add(Area.of("front bunker", AreaKind.BUNKER, disc(-15, yards - 13, 5)));
        areas.add(Area.of("side bunker", AreaKind.BUNKER, disc(19, yards + 4, 5)));
        if (PAR[index] > 3) {
            areas.add(Area.of("fairway bunker", AreaKind.BUNKER, disc(side * 21, 230, 6)));
        }
        if (!open) {
            areas.add(Area.of("left wood", AreaKind.WOODS, box(-130, 40, -32, yards + 60)));
            areas.add(Area.of("right wood", AreaKind.WOODS, box(32, 40, 130, yards + 60)));
        }
        double bounds = open ? 200 : 60;
        double beyond = open ? 200 : 120;
        Region boundary = box(side > 0 ? -beyond : -bounds, -60, side > 0 ? bounds : beyond, yards + 60);
        return course(index, yards, areas, boundary);
    }

    private static Ground course(int index, double yards, List<Area> areas, Region boundary) {
        Place tee = place(0, 0);
        Place middle = place(0, yards);
        double turn = Math.PI / 2 * index;
        Place location = place(5 * Math.sin(turn), yards + 5 * Math.cos(turn));
        Hole hole = new Hole(
                index + 1,
                PAR[index],
                "tag",
                OptionalInt.empty(),
                new Line(List.of(tee, middle)),
                disc(0, yards, 14),
                false,
                location,
                new HoleSurvey(true, true, true, true));
        TeeSet tees = new TeeSet("tees", 0, Map.of(index + 1, new TeePlace(tee, Optional.empty())));
        Course course = new Course(
                "reference",
                new LatLon(0, 0),
                Optional.of(boundary),
                false,
                areas,
                List.of(),
                List.of(hole),
                List.of(tees));
        return new Ground(course, hole, tee);
    }

    static Region disc(double xYards, double yYards, double radiusYards) {
        return Region.circle(
                place(xYards, yYards), Distance.ofYards(radiusYards).metres());
    }

    static Region box(double minX, double minY, double maxX, double maxY) {
        return Region.of(List.of(place(minX, minY), place(maxX, minY), place(maxX, maxY), place(minX, maxY)));
    }

    static Place place(double xYards, double yYards) {
        return new Place(
                Distance.ofYards(xYards).metres(), Distance.ofYards(yYards).metres());
    }
}
