package loopwright.adapter.osm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import loopwright.action.UserFault;
import loopwright.action.WholeFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BrokenCourseFileTest {
    @TempDir
    Path folder;

    private final OsmCourseFiles files = new OsmCourseFiles();

    @Test
    void aMissingFile() {
        assertFault(folder.resolve("none.osm"), "does not exist");
    }

    @Test
    void anEmptyFile() throws IOException {
        assertFault(file(""), "is empty");
    }

    @Test
    void aFileOfAnotherKind() throws IOException {
        assertFault(file("hole,par\n1,4\n"), "is no map file");
    }

    @Test
    void truncatedXmlNamesTheLine() throws IOException {
        assertFault(file("<osm>\n<node id='1' lat='1' lon='1'/>\n<way id='2'>\n<nd ref"), "line 4");
    }

    @Test
    void aByteThatIsNoUtf8CostsOneLetterAndSaysNothingToTheTerminal() throws IOException {
        String map = "<osm><node id='1' lat='50' lon='10'/><node id='2' lat='50.003' lon='10'/>"
                + "<way id='3'><nd ref='1'/><nd ref='2'/><tag k='golf' v='hole'/><tag k='name' v='Gr\u00fcn'/></way></osm>";
        Path latin = Files.write(folder.resolve("latin.osm"), map.getBytes(StandardCharsets.ISO_8859_1));
        Path declared = Files.write(
                folder.resolve("declared.osm"),
                ("<?xml version='1.0' encoding='ISO-8859-1'?>" + map).getBytes(StandardCharsets.ISO_8859_1));
        Path marked = Files.writeString(folder.resolve("marked.osm"), "\uFEFF" + map);
        PrintStream terminal = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try {
            System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
            for (Path file : new Path[] {latin, declared, marked}) {
                assertThat(new OsmCourseFiles().read(file).course().holes()).hasSize(1);
            }
        } finally {
            System.setErr(terminal);
        }
        assertThat(said.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    @Test
    void truncatedJsonNamesTheLine() throws IOException {
        assertFault(file("{\"type\":\"FeatureCollection\",\n\"features\":[\n{\"type\":\"Fea"), "line 3");
    }

    @Test
    void xmlOfAnotherKind() throws IOException {
        assertFault(file("<gpx><wpt/></gpx>"), "<gpx>");
    }

    @Test
    void anEntityThatWouldUnfold() throws IOException {
        assertFault(file("<!DOCTYPE osm [<!ENTITY a \"aaaa\">]><osm>&a;</osm>"), "malformed");
    }

    @Test
    void aMapWithoutGolf() throws IOException {
        assertFault(file("<osm><node id='1' lat='1' lon='1'/></osm>"), "golf");
    }

    @Test
    void jsonOfAnotherKind() throws IOException {
        assertFault(file("{\"shots\":[]}"), "neither GeoJSON");
    }

    @Test
    void aFolderThatDoesNotExistLeavesNothingBehind() throws IOException {
        Path target = folder.resolve("missing/course.geojson");
        assertThatThrownBy(() -> WholeFile.write(target, "x")).isInstanceOf(UserFault.class);
        assertThat(folder).isEmptyDirectory();
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("course.map"), text);
    }

    private void assertFault(Path file, String words) {
        assertThatThrownBy(() -> files.read(file)).isInstanceOf(UserFault.class).hasMessageContaining(words);
    }
}
