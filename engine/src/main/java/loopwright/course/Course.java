package loopwright.course;

import java.util.List;
import java.util.Optional;
import loopwright.geo.LatLon;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.HeightField;

/**
 * A course in its own local frame.
 *
 * @param origin centre of the local frame
 * @param boundary what lies beyond is out of bounds; empty: no out of bounds is known
 * @param boundaryGuessed true if the boundary is only the mapped border of the property
 * @param holes in playing order, numbers unique
 * @param teeSets longest first
 * @param heights of the ground; empty: the course is taken as flat
 */
public record Course(
        String name,
        LatLon origin,
        Optional<Region> boundary,
        boolean boundaryGuessed,
        List<Area> areas,
        List<Tree> trees,
        List<Hole> holes,
        List<TeeSet> teeSets,
        Optional<HeightField> heights) {
    public Course {
        areas = List.copyOf(areas);
        trees = List.copyOf(trees);
        holes = List.copyOf(holes);
        teeSets = List.copyOf(teeSets);
        if (holes.stream().mapToInt(Hole::number).distinct().count() != holes.size()) {
            throw new IllegalArgumentException("two holes of " + name + " have the same number");
        }
    }

    /** A flat course. */
    public Course(
            String name,
            LatLon origin,
            Optional<Region> boundary,
            boolean boundaryGuessed,
            List<Area> areas,
            List<Tree> trees,
            List<Hole> holes,
            List<TeeSet> teeSets) {
        this(name, origin, boundary, boundaryGuessed, areas, trees, holes, teeSets, Optional.empty());
    }

    public Course withHeights(HeightField field) {
        return new Course(name, origin, boundary, boundaryGuessed, areas, trees, holes, teeSets, Optional.of(field));
    }

    public Course withAreas(List<Area> newAreas) {
        return new Course(name, origin, boundary, boundaryGuessed, newAreas, trees, holes, teeSets, heights);
    }

    public Course withTrees(List<Tree> newTrees) {
        return new Course(name, origin, boundary, boundaryGuessed, areas, newTrees, holes, teeSets, heights);
    }

    /** With a border that somebody has drawn; empty: no out of bounds is known. */
    public Course withBoundary(Optional<Region> drawn) {
        return new Course(name, origin, drawn, false, areas, trees, holes, teeSets, heights);
    }

    public Course withTeeSets(List<TeeSet> newSets) {
        return new Course(name, origin, boundary, boundaryGuessed, areas, trees, holes, newSets, heights);
    }

    /** The boundary, confirmed by somebody who has seen the stakes or the card. */
    public Course withBoundaryConfirmed() {
        return new Course(name, origin, boundary, false, areas, trees, holes, teeSets, heights);
    }

    public Course withHoles(List<Hole> newHoles) {
        return new Course(name, origin, boundary, boundaryGuessed, areas, trees, newHoles, teeSets, heights);
    }

    /** How much higher {@code to} lies than {@code from}, metres; 0 where no heights are known. */
    public double riseMetres(Place from, Place to) {
        return heights.map(h -> h.riseMetres(from, to)).orElse(0.0);
    }

    public Hole getHole(int number) {
        return holes.stream()
                .filter(h -> h.number() == number)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name + " has no hole " + number));
    }

    public int par() {
        return holes.stream().mapToInt(Hole::par).sum();
    }

    /** A set by its name, or by "back", "middle", "forward", which always work. */
    public Optional<TeeSet> findTeeSet(String wanted) {
        for (TeeSet set : teeSets) {
            if (set.name().equalsIgnoreCase(wanted)) {
                return Optional.of(set);
            }
        }
        int last = teeSets.size() - 1;
        return switch (wanted.toLowerCase(java.util.Locale.ROOT)) {
            case "back" -> Optional.of(teeSets.get(0));
            case "middle" -> Optional.of(teeSets.get(last / 2));
            case "forward" -> Optional.of(teeSets.get(last));
            default -> Optional.empty();
        };
    }

    /** Length of a hole from a set of tees along the line of play to today's hole location, metres. */
    public double lengthMetres(Hole hole, TeeSet tees) {
        return hole.lineFrom(tees.getPlace(hole.number()).place()).lengthMetres();
    }

    /** Length of the whole course from a set of tees, metres. */
    public double lengthMetres(TeeSet tees) {
        return holes.stream().mapToDouble(h -> lengthMetres(h, tees)).sum();
    }
}
