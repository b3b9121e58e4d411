package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import loopwright.action.ImportRecord;
import loopwright.course.AreaKind;
import loopwright.geo.Box;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;

/** The elements of one course and its surroundings in the local frame, sorted by what they are. */
final class Site {
    /** Landscape further than this from all golf cannot be reached by a shot. */
    private static final double SURROUNDINGS_METRES = 300;

    final LocalFrame frame;
    final Optional<SiteElement> boundary;
    final List<SiteElement> holeElements = new ArrayList<>();
    final List<SiteElement> pins = new ArrayList<>();
    /** Everything with an area kind: greens, tees (also as points), fairways, landscape. */
    final List<SiteElement> areas = new ArrayList<>();

    final List<SiteElement> outOfBoundsLines = new ArrayList<>();
    final List<MapElement> treeElements = new ArrayList<>();

    Site(CourseCandidate candidate, List<MapElement> all, LocalFrame frame, List<ImportRecord> records) {
        this.frame = frame;
        ShapeMender mender = new ShapeMender(frame, records);
        boundary = candidate.boundary().flatMap(b -> mender.toSite(b, CourseFinder.BORDER));
        Box reach = reach(candidate);
        Set<String> own = candidate.golf().stream().map(MapElement::id).collect(Collectors.toSet());
        for (MapElement e : all) {
            boolean golf = MapTags.isGolf(e.tags());
            if (golf ? own.contains(e.id()) : touches(e, reach)) {
                sort(e, mender);
            }
        }
    }

    private Box reach(CourseCandidate candidate) {
        List<Place> places = new ArrayList<>();
        candidate.golf().forEach(e -> MapPoints.of(e.shape()).forEach(p -> places.add(frame.toPlace(p))));
        boundary.ifPresent(b -> b.getRegion().polygons().forEach(p -> places.addAll(p.get(0))));
        return Box.around(places).grown(SURROUNDINGS_METRES);
    }

    private boolean touches(MapElement e, Box reach) {
        return MapPoints.of(e.shape()).stream().map(frame::toPlace).anyMatch(p -> reach.contains(p.x(), p.y()));
    }

    private void sort(MapElement e, ShapeMender mender) {
        if (e.golf("hole")) {
            mender.toSite(e, HoleLines.HOLE).ifPresent(holeElements::add);
        } else if (e.golf("pin", "hole_location")) {
            mender.toSite(e, AreaReading.of(e)).ifPresent(pins::add);
        } else if (e.has("natural", "tree", "tree_row")) {
            treeElements.add(e);
        } else if (AreaReading.of(e).isArea()) {
            mender.toSite(e, AreaReading.of(e)).ifPresent(s -> {
                boolean line = s.region().isEmpty() && s.line().isPresent();
                if (line && e.golf("out_of_bounds")) {
                    outOfBoundsLines.add(s);
                } else {
                    areas.add(s);
                }
            });
        }
    }

    List<SiteElement> of(AreaKind kind) {
        return areas.stream()
                .filter(a -> AreaReading.of(a.map()).kind().orElse(null) == kind)
                .toList();
    }
}
