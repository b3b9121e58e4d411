package loopwright.adapter.osm;

/** An OSM file that can be gone through several times, so that only what is needed is ever kept. */
interface OsmSource {
    void visit(OsmVisitor visitor);
}
