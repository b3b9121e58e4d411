package loopwright.adapter.osm;

/** Our own property names in a course file, beside OSM's. */
final class OwnKeys {
    static final String PREFIX = "loopwright:";
    static final String VERSION = PREFIX + "version";
    static final String ORIGIN = PREFIX + "origin";
    static final String BOUNDARY = PREFIX + "boundary";
    static final String TEE_SETS = PREFIX + "tee_sets";
    static final String HEIGHTS = PREFIX + "heights";
    static final String AREA = PREFIX + "area";
    static final String NOT_FOUND_CHANCE = PREFIX + "not_found_chance";
    static final String PAR_SOURCE = PREFIX + "par_source";
    static final String GREEN = PREFIX + "green";
    static final String GREEN_ASSUMED = PREFIX + "green_assumed";
    static final String HOLE_LOCATION = PREFIX + "hole_location";
    static final String TEE_SET = PREFIX + "tee_set";
    static final String STANDS_IN = PREFIX + "stands_in";
    /** Value of {@link #AREA} for a green that one hole plays to but that is not an area of the course. */
    static final String HOLE_GREEN_ONLY = "hole_green";

    private OwnKeys() {}
}
