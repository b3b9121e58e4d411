package loopwright.course;

import loopwright.ground.Surface;
import org.jspecify.annotations.Nullable;

/**
 * Kinds of mapped areas, in the order in which they cover each other: where areas overlap, the kind declared first
 * decides the surface. Kinds without a surface of their own are drawn and watched, not played from.
 */
public enum AreaKind {
    GREEN(Surface.GREEN),
    BUNKER(Surface.BUNKER),
    TEE(Surface.TEE),
    YELLOW_PENALTY_AREA(Surface.YELLOW_PENALTY_AREA),
    RED_PENALTY_AREA(Surface.RED_PENALTY_AREA),
    OUT_OF_BOUNDS(Surface.OUT_OF_BOUNDS),
    FAIRWAY(Surface.FAIRWAY),
    WASTE_AREA(Surface.WASTE_AREA),
    WOODS(Surface.WOODS),
    DEEP_ROUGH(Surface.DEEP_ROUGH),
    ROUGH(Surface.ROUGH),
    PATH(null),
    ROAD(null),
    BUILDING(null),
    PRACTICE(null);

    private final @Nullable Surface surface;

    AreaKind(@Nullable Surface surface) {
        this.surface = surface;
    }

    /** The surface of this kind, or null if the area leaves what lies below it as it is. */
    public @Nullable Surface surface() {
        return surface;
    }
}
