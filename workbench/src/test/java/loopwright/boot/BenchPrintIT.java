package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The day sheet in a real browser: a book of one hole, what is printed from it, and the books of a team of two. */
class BenchPrintIT {
    private static final String ORDER = "target=4&holes=2&paper=letter&lengths=metres";

    @TempDir
    private static Path folder;

    private static @Nullable OpenBench bench;

    @BeforeAll
    static void openWithTwoPlayers() {
        for (String file : List.of("player.json", "player.json", "course.geojson")) {
            Typed run =
                    Typed.run("store", "import", Path.of("..", "demo", file).toString(), "--data", folder.toString());
            assertThat(run.exitCode()).as(run.err()).isZero();
        }
        bench = OpenBench.withBrowser(folder);
    }

    @AfterAll
    static void close() {
        if (bench != null) {
            bench.close();
        }
    }

    private static byte[] get(String address) throws Exception {
        HttpResponse<byte[]> answer = answer(address);
        assertThat(answer.statusCode()).as(address).isEqualTo(200);
        return answer.body();
    }

    private static HttpResponse<byte[]> answer(String address) throws Exception {
        URI uri = URI.create(Objects.requireNonNull(bench).origin() + address);
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(uri).build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private static String text(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void aBookIsMadeOnThePageAndPrintedInPieces() throws Exception {
        Browser b = Objects.requireNonNull(bench).browser();
        b.go("/print");
        b.assertAccessible();
        b.go("/print?" + ORDER + "&make=book").await(".pages img");
        b.assertAccessible();
        b.screenshots("print");
        b.assertNoForeignRequest();
        assertThat(text(get("/print/file?" + ORDER + "&what=book"))).contains("lengths in metres", "Pencil card");
        assertThat(text(get("/print/file?" + ORDER + "&what=card"))).contains("Card", "Before the first tee");
        assertThat(text(get("/print/file?" + ORDER + "&what=pencil"))).containsPattern("(?s)(Pencil card.*){4}");
        assertThat(text(get("/print/file?" + ORDER + "&what=wedges"))).contains("Wedge table");
        assertThat(text(get("/print/file?" + ORDER + "&what=coach"))).contains("2");
        assertThat(new String(get("/print/page.svg?" + ORDER + "&page=1"), StandardCharsets.UTF_8))
                .startsWith("<svg");
    }

    @Test
    void whatNeedsNoPlanIsThereAtOnce() throws Exception {
        assertThat(text(get("/print/file?" + ORDER + "&what=walk"))).contains("holes 13 to 18");
        assertThat(text(get("/print/file?" + ORDER + "&what=measuring"))).contains("Measuring session");
        Browser b = Objects.requireNonNull(bench).browser();
        assertThat(b.go("/print").text("main")).contains("No round of this player is kept");
        HttpResponse<byte[]> wrong = answer("/print/file?" + ORDER + "&what=nothing");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(new String(wrong.body(), StandardCharsets.UTF_8)).contains("nothing called \"nothing\"");
    }

    @Test
    void aTeamGetsItsBooksInOneZip() throws Exception {
        Browser b = Objects.requireNonNull(bench).browser();
        b.go("/print");
        b.run("document.querySelector('details:has([name=team])').open = true;"
                + "document.querySelectorAll('[name=team]').forEach(t => t.checked = true);"
                + "const f = document.querySelector('form.sheet'); f.target.value = 4;"
                + "const h = document.createElement('input'); h.name = 'holes'; h.value = '2'; f.append(h);");
        b.get("[value=team]").click();
        b.await("a[href*='what=team']");
        String address =
                String.valueOf(b.run("return document.querySelector(\"a[href*='what=team']\").getAttribute('href')"));
        List<String> names = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(get(address)))) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                names.add(e.getName());
                assertThat(text(zip.readAllBytes())).contains("Wedge table");
            }
        }
        assertThat(names).hasSize(2).doesNotHaveDuplicates().allMatch(n -> n.startsWith("invented-player"));
    }
}
