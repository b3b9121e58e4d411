package loopwright.adapter.osm;

import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.course.AreaKind;

/**
 * What an element's tags say it is on a golf course. The golf key decides first: lines and areas often carry other
 * keys for other maps (a hole line that is also a footpath, a green that is also a recreation ground).
 *
 * @param kind the kind of area, empty for everything that is not an area of the course
 * @param isGolf true if a golf key said so, false if it follows from the landscape
 * @param mayBeLine true if an open way is a fair drawing (a ditch, a path)
 */
record AreaReading(Optional<AreaKind> kind, boolean isGolf, boolean mayBeLine) {
    private static final AreaReading NOTHING = new AreaReading(Optional.empty(), false, true);

    boolean isArea() {
        return kind.isPresent();
    }

    static AreaReading of(MapElement e) {
        return e.golf() ? ofGolf(e) : ofLandscape(e);
    }

    private static AreaReading ofGolf(MapElement e) {
        return switch (e.get("golf")) {
            case "green" -> golf(AreaKind.GREEN, false);
            case "fairway" -> golf(AreaKind.FAIRWAY, false);
            case "bunker" -> golf(AreaKind.BUNKER, false);
            case "tee" -> golf(AreaKind.TEE, false);
            case "rough" -> golf(AreaKind.ROUGH, false);
            case "water_hazard" -> golf(AreaKind.YELLOW_PENALTY_AREA, true);
            case "lateral_water_hazard" -> golf(AreaKind.RED_PENALTY_AREA, true);
            case "out_of_bounds" -> golf(AreaKind.OUT_OF_BOUNDS, true);
            case "driving_range", "practice", "pitch_and_putt" -> golf(AreaKind.PRACTICE, false);
            case "clubhouse" -> golf(AreaKind.BUILDING, true);
            case "cartpath", "path" -> golf(AreaKind.PATH, true);
            default -> NOTHING;
        };
    }

    private static AreaReading golf(AreaKind kind, boolean mayBeLine) {
        return new AreaReading(Optional.of(kind), true, mayBeLine);
    }

    private static AreaReading ofLandscape(MapElement e) {
        if (e.has("building")) {
            return landscape(AreaKind.BUILDING);
        }
        if (e.has("highway", "footway", "path", "cycleway", "bridleway", "steps", "track", "pedestrian")) {
            return landscape(AreaKind.PATH);
        }
        if (e.has("highway", "motorway", "trunk", "primary", "secondary", "tertiary", "unclassified", "residential")
                || e.has("highway", "service", "living_street", "road", "motorway_link", "trunk_link")
                || e.has("highway", "primary_link", "secondary_link", "tertiary_link", "busway")
                || e.has("railway", "rail", "tram", "light_rail")) {
            return landscape(AreaKind.ROAD);
        }
        if (e.has("natural", "wood") || e.has("landuse", "forest")) {
            return landscape(AreaKind.WOODS);
        }
        if (e.has("natural", "water", "wetland", "bay")
                || e.has("water")
                || e.has("waterway", "river", "stream", "canal", "ditch", "drain", "riverbank", "brook")
                || e.has("landuse", "basin", "reservoir")) {
            return landscape(AreaKind.RED_PENALTY_AREA);
        }
        if (e.has("natural", "scrub", "heath")) {
            return landscape(AreaKind.DEEP_ROUGH);
        }
        if (e.has("natural", "sand", "beach", "dune", "shingle", "bare_rock")) {
            return landscape(AreaKind.WASTE_AREA);
        }
        return NOTHING;
    }

    private static AreaReading landscape(AreaKind kind) {
        return new AreaReading(Optional.of(kind), false, true);
    }

    /** True if a way is the edge of an area; roads and streams that come back to their start are still lines. */
    boolean fills(MapElement e, boolean closed) {
        if (kind.isEmpty()) {
            return false;
        }
        boolean linear = kind.get() == AreaKind.PATH
                || kind.get() == AreaKind.ROAD
                || (e.has("waterway") && !e.has("waterway", "riverbank") && !e.has("natural", "water"));
        if (linear && !isGolf) {
            return closed && e.has("area", "yes");
        }
        return closed || (isGolf && !mayBeLine);
    }

    /** Width given to a line of this kind; tagged width first, else assumed by kind (no source). */
    OptionalDouble lineWidthMetres(MapElement e) {
        if (kind.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble tagged = OsmNumbers.metres(e.get("width"));
        double assumed = switch (kind.get()) {
            case YELLOW_PENALTY_AREA, RED_PENALTY_AREA ->
                e.has("waterway", "river") ? 10 : e.has("waterway", "canal") ? 6 : 2;
            case PATH -> 2.5;
            case ROAD -> e.has("highway", "service") || e.has("railway") ? 4 : 7;
            default -> 0;
        };
        if (assumed == 0) {
            return OptionalDouble.empty();
        }
        boolean believable = tagged.isPresent() && tagged.getAsDouble() > 0.2 && tagged.getAsDouble() < 200;
        return believable ? tagged : OptionalDouble.of(assumed);
    }

    /** Radius of the circle that stands for a point of this kind, where a point alone would be useless. */
    OptionalDouble pointRadiusMetres() {
        if (!isGolf || kind.isEmpty()) {
            return OptionalDouble.empty();
        }
        return switch (kind.get()) {
            case GREEN -> OptionalDouble.of(GreenFinder.ASSUMED_RADIUS_METRES);
            case BUNKER -> OptionalDouble.of(4);
            default -> OptionalDouble.empty();
        };
    }
}
