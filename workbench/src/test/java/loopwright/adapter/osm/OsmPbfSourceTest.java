package loopwright.adapter.osm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import loopwright.action.UserFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OsmPbfSourceTest {
    private static final String XML = "<osm><node id='5' lat='-30.1' lon='-51.25'><tag k='golf' v='pin'/></node>"
            + "<node id='-7' lat='1' lon='2'/><way id='9'><nd ref='5'/><nd ref='-7'/><tag k='golf' v='hole'/></way>"
            + "<relation id='3'><member type='way' ref='9' role='outer'/><tag k='type' v='multipolygon'/></relation>"
            + "</osm>";

    @TempDir
    Path folder;

    @Test
    void givesTheSameObjectsAsXml() throws IOException {
        OsmXmlSource xml = new OsmXmlSource(Files.writeString(folder.resolve("a.osm"), XML));
        Path pbf = Files.write(folder.resolve("a.pbf"), TinyPbf.of(xml));
        assertThat(told(new OsmPbfSource(pbf))).isEqualTo(told(xml)).hasSize(4);
    }

    @Test
    void aBlobThatUnpacksToMoreThanItStatesIsRefused() throws IOException {
        assertRefused(blob(new byte[20 << 20], 1000), "more than it states");
    }

    @Test
    void aBlobThatStatesMoreThanTheFormatAllowsIsRefused() throws IOException {
        assertRefused(blob(new byte[100], 4L << 30), "would unpack to");
    }

    @Test
    void aBlobThatUnpacksToLessIsRefused() throws IOException {
        assertRefused(blob(new byte[100], 200), "less than it states");
    }

    @Test
    void aHeaderThatLiesAboutItsLengthIsRefused() throws IOException {
        byte[] file = blob(new byte[0], 0);
        file[0] = 0x7F;
        assertRefused(file, "a header of");
    }

    @Test
    void aTruncatedFileIsRefused() throws IOException {
        byte[] whole = TinyPbf.of(new OsmXmlSource(Files.writeString(folder.resolve("a.osm"), XML)));
        assertRefused(Arrays.copyOf(whole, whole.length - 5), "breaks off");
    }

    private static byte[] blob(byte[] raw, long stated) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TinyPbf.blob(out, "OSMData", raw, stated);
        return out.toByteArray();
    }

    private void assertRefused(byte[] bytes, String words) throws IOException {
        Path file = Files.write(folder.resolve("b.pbf"), bytes);
        assertThatThrownBy(() -> told(new OsmPbfSource(file)))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining(words);
    }

    private static List<String> told(OsmSource source) {
        List<String> out = new ArrayList<>();
        source.visit(new OsmVisitor() {
            @Override
            public void node(long id, int lat, int lon, Map<String, String> tags) {
                out.add("node " + id + " " + lat + " " + lon + " " + tags);
            }

            @Override
            public void way(long id, long[] nodes, Map<String, String> tags) {
                out.add("way " + id + " " + Arrays.toString(nodes) + " " + tags);
            }

            @Override
            public void relation(long id, List<Member> members, Map<String, String> tags) {
                out.add("relation " + id + " " + members + " " + tags);
            }
        });
        return out;
    }
}
