package loopwright.course;

import loopwright.geo.Region;

/**
 * One mapped area.
 *
 * @param id the source's own name of it ("way/222586240"), unique in a course
 * @param notFoundChance chance 0 to 1 that a ball that comes to rest in it is not found within three minutes
 * @param survey what was measured there
 */
public record Area(String id, AreaKind kind, Region region, double notFoundChance, AreaSurvey survey) {
    public Area {
        if (!(notFoundChance >= 0 && notFoundChance <= 1)) {
            throw new IllegalArgumentException("a chance lies between 0 and 1, not " + notFoundChance);
        }
    }

    /** An area nobody has measured anything at. */
    public Area(String id, AreaKind kind, Region region, double notFoundChance) {
        this(id, kind, region, notFoundChance, AreaSurvey.NOTHING);
    }

    public Area withNotFoundChance(double chance) {
        return new Area(id, kind, region, chance, survey);
    }

    public Area withSurvey(AreaSurvey newSurvey) {
        return new Area(id, kind, region, notFoundChance, newSurvey);
    }

    /** An area with the default chance of its kind (assumed; the coach sets his own in the survey). */
    public static Area of(String id, AreaKind kind, Region region) {
        return new Area(id, kind, region, defaultNotFoundChance(kind));
    }

    /** Default chance that a ball is not found in an area of this kind: assumed, no source. */
    public static double defaultNotFoundChance(AreaKind kind) {
        return switch (kind) {
            case WOODS -> 0.15;
            case DEEP_ROUGH -> 0.10;
            default -> 0;
        };
    }
}
