package loopwright.course;

import java.util.OptionalInt;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/**
 * One hole.
 *
 * @param number 1 to 99, unique in its course
 * @param par 3 to 6
 * @param parSource where the par comes from: "tag", "name", "length" or "survey"
 * @param strokeIndex 1 to 18 where known
 * @param line from the back tee to the middle of the green, with the bends of the hole
 * @param green the putting green that is played to
 * @param greenAssumed true if the map has no green here and a circle of 12 yd across stands in
 * @param holeLocation where the hole is cut today
 */
public record Hole(
        int number,
        int par,
        String parSource,
        OptionalInt strokeIndex,
        Line line,
        Region green,
        boolean greenAssumed,
        Place holeLocation,
        HoleSurvey survey) {
    public Hole {
        if (number < 1 || number > 99) {
            throw new IllegalArgumentException("a hole's number lies between 1 and 99, not " + number);
        }
        if (par < 3 || par > 6) {
            throw new IllegalArgumentException("par lies between 3 and 6, not " + par);
        }
        if (strokeIndex.isPresent() && (strokeIndex.getAsInt() < 1 || strokeIndex.getAsInt() > 18)) {
            throw new IllegalArgumentException("a stroke index lies between 1 and 18");
        }
        if (!green.contains(holeLocation)) {
            throw new IllegalArgumentException("the hole location of hole " + number + " is not on its green");
        }
    }

    public Hole withHoleLocation(Place place) {
        return new Hole(number, par, parSource, strokeIndex, line, green, greenAssumed, place, survey);
    }

    public Hole withLine(Line newLine) {
        return new Hole(number, par, parSource, strokeIndex, newLine, green, greenAssumed, holeLocation, survey);
    }

    public Hole withSurvey(HoleSurvey survey) {
        return new Hole(number, par, parSource, strokeIndex, line, green, greenAssumed, holeLocation, survey);
    }

    /** The line of play from a tee to the hole location: the bends of the hole line that lie ahead of the tee. */
    public Line lineFrom(Place tee) {
        java.util.List<Place> out = new java.util.ArrayList<>();
        out.add(tee);
        double start = line.along(tee);
        for (int i = 1; i < line.places().size() - 1; i++) {
            Place bend = line.places().get(i);
            if (line.along(bend) > start + 1) {
                out.add(bend);
            }
        }
        out.add(holeLocation);
        return new Line(out);
    }
}
