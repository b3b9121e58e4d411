package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The book of one hole of the demo, as it is typed. */
class BookIT {
    private static final Path DEMO = Path.of("..", "demo");

    @TempDir
    Path folder;

    private Typed typed(String verb, String... more) {
        List<String> args = new ArrayList<>(List.of(
                verb,
                "--course",
                DEMO.resolve("course.geojson").toString(),
                "--player",
                DEMO.resolve("player.json").toString(),
                "--target",
                "4"));
        args.addAll(List.of(more));
        return Typed.run(args.toArray(String[]::new));
    }

    @Test
    void aBookIsWrittenAndItsNumbersAreThePlans() throws IOException {
        Path json = folder.resolve("book.json");
        Path planJson = folder.resolve("plan.json");
        Path pdf = folder.resolve("book.pdf");
        Typed run = typed(
                "book",
                "--holes",
                "2",
                "--out",
                pdf.toString(),
                "--json",
                json.toString(),
                "--pages",
                folder.resolve("pages").toString(),
                "--coach",
                folder.resolve("coach.pdf").toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("Book of 7 pages").contains("100 %");
        Schema.assertFits("book.schema.json", json);
        assertThat(Files.size(pdf)).isBetween(20_000L, 3_000_000L);
        assertThat(folder.resolve("coach.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("pages").resolve("page-02.svg")).isNotEmptyFile();
        assertThat(folder.resolve("pages").resolve("page-03.png")).isNotEmptyFile();

        assertThat(typed("plan", "--holes", "2", "--json", planJson.toString()).exitCode())
                .isZero();
        ObjectMapper mapper = new ObjectMapper();
        JsonNode book = mapper.readTree(json.toFile());
        JsonNode plan = mapper.readTree(planJson.toFile());
        assertThat(book.get("plan")).isEqualTo(plan);
        JsonNode hole = plan.get("holes").get(0);
        JsonNode tee = hole.get("shots").get(0);
        JsonNode page = book.get("pages").get(1);
        assertThat(texts(page, "facts")).contains("par 4, " + whole(hole, "lengthYards") + " yd");
        assertThat(texts(page, "club")).isEqualTo(tee.get("club").asText());
        assertThat(texts(page, "aim")).contains(tee.get("aim").get("landmark").asText());
        assertThat(texts(page, "room"))
                .contains("Room " + whole(tee.get("room"), "widthYards") + " at "
                        + whole(tee.get("aim"), "distanceYards"))
                .contains("need " + whole(tee.get("room"), "eightInTenYards"));
        assertThat(texts(page, "carry"))
                .contains("Carry " + whole(tee.get("carries").get(0), "carryYards"));
        JsonNode next = hole.get("shots").get(1);
        assertThat(texts(page, "next"))
                .contains("about " + whole(next.get("from"), "toHoleYards") + ": "
                        + next.get("club").asText());
        double bogey = hole.get("pParOrBetter").asDouble() + hole.get("pBogey").asDouble();
        assertThat(texts(page, "sentence"))
                .containsAnyOf(
                        "bogey or better " + Math.round(10 * bogey) + " in 10",
                        "bogey or better nearly always",
                        "costs");
    }

    private static String texts(JsonNode page, String role) {
        return String.join(
                "|",
                StreamSupport.stream(page.get("lines").spliterator(), false)
                        .filter(l -> l.get("role").asText().equals(role))
                        .map(l -> l.get("text").asText())
                        .toList());
    }

    private static String whole(JsonNode node, String name) {
        return String.format(Locale.ROOT, "%d", Math.round(node.get(name).asDouble()));
    }

    @Test
    void sheetsToWriteOnArePrinted() throws IOException {
        Path walk = folder.resolve("walk.pdf");
        Typed run = Typed.run(
                "course",
                "walk",
                DEMO.resolve("course.geojson").toString(),
                "--out",
                walk.toString(),
                "--paper",
                "letter");
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("3 sheets");
        Path session = folder.resolve("session.pdf");
        assertThat(Typed.run("player", "sheet", "--print", session.toString()).exitCode())
                .isZero();
        try (PDDocument document = Loader.loadPDF(walk.toFile());
                PDDocument sheets = Loader.loadPDF(session.toFile())) {
            assertThat(new PDFTextStripper().getText(document)).contains("holes 13 to 18", "bunkers", "deep: ____");
            assertThat(sheets.getNumberOfPages()).isEqualTo(3);
            assertThat(new PDFTextStripper().getText(sheets)).contains("30 ft putt 6");
        }
        Typed wrong = Typed.run(
                "course",
                "walk",
                DEMO.resolve("course.geojson").toString(),
                "--out",
                walk.toString(),
                "--tees",
                "purple");
        assertThat(wrong.exitCode()).isEqualTo(2);
        assertThat(wrong.err()).contains("There are no purple tees");
    }

    @Test
    void whatIsMistypedIsSaidInOneSentenceBeforeAnythingIsSolved() {
        assertThat(refused("--out", "b.pdf", "--paper", "a3")).contains("--paper a3 is not known; it is a4 or letter.");
        assertThat(refused("--out", "b.pdf", "--units", "feet")).contains("it is yards or metres");
        assertThat(refused("--out", folder.resolve("none/b.pdf").toString())).contains("folder does not exist");
        assertThat(refused("--out", "b.pdf", "--wind", "none", "--wind", "10 mph from 90"))
                .contains("for one day");
        assertThat(refused("--units", "yards")).contains("--out");
    }

    private String refused(String... args) {
        Typed run = typed("book", args);
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).doesNotContain("Exception");
        return run.err();
    }
}
