package loopwright.adapter.osm;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import loopwright.action.CourseChoice;
import loopwright.action.UserFault;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * However a file is damaged, reading it gives a course or one sentence for the user, never anything else, and never a
 * hang. The small map holds every kind of object in every format; the whole study adds real maps.
 */
class DamagedFilePropertyTest {
    /** A hang, not a speed: a file of this size is read in milliseconds. */
    private static final double HANG_SECONDS = 5;

    private static final String SMALL_MAP = """
            <osm version="0.6">
            <node id="1" lat="50.0000000" lon="10.0000000"><tag k="golf" v="tee"/><tag k="tee" v="gold;white"/></node>
            <node id="2" lat="50.0030000" lon="10.0001000"><tag k="golf" v="pin"/><tag k="ref" v="1"/></node>
            <node id="3" lat="50.0028000" lon="9.9998000"/><node id="4" lat="50.0028000" lon="10.0004000"/>
            <node id="5" lat="50.0032000" lon="10.0004000"/><node id="6" lat="50.0032000" lon="9.9998000"/>
            <node id="7" lat="49.9980000" lon="9.9950000"/><node id="8" lat="49.9980000" lon="10.0050000"/>
            <node id="9" lat="50.0060000" lon="10.0050000"/><node id="10" lat="50.0060000" lon="9.9950000"/>
            <node id="11" lat="50.0010000" lon="9.9995000"/><node id="12" lat="50.0010000" lon="10.0005000"/>
            <node id="13" lat="50.0035000" lon="10.0006000"/><node id="14" lat="50.0035000" lon="9.9994000"/>
            <node id="15" lat="50.0015000" lon="10.0010000"><tag k="natural" v="tree"/><tag k="height" v="14"/></node>
            <way id="20"><nd ref="1"/><nd ref="2"/><tag k="golf" v="hole"/><tag k="ref" v="1"/><tag k="par" v="4"/>
            <tag k="dist:red" v="250 yd"/><tag k="handicap" v="3"/></way>
            <way id="21"><nd ref="3"/><nd ref="4"/><nd ref="5"/><nd ref="6"/><nd ref="3"/><tag k="golf" v="green"/></way>
            <way id="22"><nd ref="7"/><nd ref="8"/><nd ref="9"/><nd ref="10"/><nd ref="7"/>
            <tag k="leisure" v="golf_course"/><tag k="name" v="Small synthetic course"/></way>
            <way id="23"><nd ref="11"/><nd ref="12"/><nd ref="13"/><nd ref="14"/><nd ref="11"/></way>
            <way id="24"><nd ref="11"/><nd ref="12"/><tag k="waterway" v="stream"/></way>
            <way id="25"><nd ref="8"/><nd ref="12"/><nd ref="4"/><nd ref="8"/><tag k="natural" v="wood"/></way>
            <way id="26"><nd ref="5"/><nd ref="1"/><tag k="golf" v="hole"/></way>
            <way id="27"><nd ref="9"/><nd ref="13"/><tag k="golf" v="out_of_bounds"/></way>
            <relation id="30"><member type="way" ref="23" role="outer"/><member type="way" ref="21" role="inner"/>
            <tag k="type" v="multipolygon"/><tag k="golf" v="fairway"/></relation>
            </osm>
            """;

    private static final String OVERPASS = """
            {"elements":[{"type":"way","id":20,"nodes":[1,2],"geometry":[{"lat":50,"lon":10},{"lat":50.003,"lon":10.0001}],
            "tags":{"golf":"hole","ref":"1"}},{"type":"relation","id":30,"members":[{"type":"way","ref":21,"role":"outer",
            "geometry":[{"lat":50.0028,"lon":9.9998},{"lat":50.0028,"lon":10.0004},{"lat":50.0032,"lon":10.0004},
            {"lat":50.0028,"lon":9.9998}]}],"tags":{"type":"multipolygon","golf":"green"}},
            {"type":"node","id":1,"lat":50,"lon":10,"tags":{"golf":"tee"}}]}
            """;

    @TempDir
    Path folder;

    private final OsmCourseFiles files = new OsmCourseFiles();
    private final Map<String, byte[]> bases = new LinkedHashMap<>();

    @BeforeEach
    void writeTheSmallMapInEveryFormat() throws IOException {
        Path xml = Files.writeString(folder.resolve("small.osm"), SMALL_MAP);
        Path own = folder.resolve("small.geojson");
        files.write(files.read(xml).course(), own);
        bases.put("xml", Files.readAllBytes(xml));
        bases.put("pbf", TinyPbf.of(new OsmXmlSource(xml)));
        bases.put("own", Files.readAllBytes(own));
        bases.put(
                "geojson",
                Files.readString(own)
                        .replace("loopwright:", "other_")
                        .getBytes(java.nio.charset.StandardCharsets.UTF_8));
        bases.put("overpass", OVERPASS.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    @Test
    void undamagedTheyAllHoldTheHole() throws IOException {
        for (var base : bases.entrySet()) {
            Path file = Files.write(folder.resolve("whole"), base.getValue());
            assertThat(files.read(file).course().getHole(1).number())
                    .as(base.getKey())
                    .isEqualTo(1);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void damagedSmallMapsGiveACourseOrASentence(long seed) throws IOException {
        for (var base : bases.entrySet()) {
            damage(base.getKey(), base.getValue(), seed * 1_000_000, 40);
        }
    }

    @Tag("long")
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void twentyThousandDamagedMaps(long seed) throws IOException {
        for (var base : bases.entrySet()) {
            damage(base.getKey(), base.getValue(), seed * 1_000_000, 900);
        }
        for (String real : new String[] {
            "island-18.osm",
            "island-18.geojson",
            "island-18.overpass.json",
            "municipal-27-town.osm.pbf",
            "hillside-17-no-refs.osm"
        }) {
            damage(real, Files.readAllBytes(SharedFiles.course(real)), seed * 1_000_000, 100);
        }
    }

    private void damage(String name, byte[] base, long firstSeed, int count) throws IOException {
        Path file = folder.resolve("damaged");
        for (long seed = firstSeed; seed < firstSeed + count; seed++) {
            Files.write(file, new FileMutator(seed).mutated(base));
            long start = System.nanoTime();
            try {
                read(file);
            } catch (UserFault e) {
                assertThat(e.getMessage())
                        .as(name + ", seed " + seed)
                        .isNotBlank()
                        .doesNotContain("\n");
            } catch (RuntimeException | StackOverflowError e) {
                throw new AssertionError(name + ", seed " + seed, e);
            }
            assertThat((System.nanoTime() - start) / 1e9)
                    .as(name + ", seed " + seed)
                    .isLessThan(HANG_SECONDS);
        }
    }

    private void read(Path file) {
        try {
            files.read(file);
        } catch (UserFault e) {
            if (!String.valueOf(e.getMessage()).contains("--name")) {
                throw e;
            }
            files.read(file, CourseChoice.numbered(1));
        }
    }
}
