package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is noted of a hole on the bench: places, slopes of the green, local rules, trees, bunkers, today's markers. */
class CourseNotesIT {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final String HOLE = "/course?hole=4";

    @TempDir
    private Path folder;

    @Test
    void everyNoteIsKeptAsAVersionAndWhatCannotBeIsRefused() throws Exception {
        try (OpenBench bench = OpenBench.on(folder)) {
            String origin = bench.origin();
            String green = green(origin);
            String nine = IntStream.range(0, 9)
                    .mapToObj(i -> "slope" + i + "=2&hour" + i + "=9")
                    .collect(Collectors.joining("&"));
            keep(origin, "what=skyline&x=100&y=50&name=old%20mill", "skyline target: old mill");
            keep(origin, "what=drop&x=150&y=300", "dropping zones: 1");
            keep(origin, "what=spot&height=0.5&" + green, "spot heights of the green: 1");
            keep(origin, "what=arrow&slope=2.5&toward=140&" + green, "slope arrows of the green: 1");
            keep(origin, "what=nine&" + nine, "slope arrows of the green: 9");
            keep(origin, "what=rules&rule=DROP_ZONE", "Model Local Rule E-1");
            keep(origin, "what=tees&name=today&base=white&forward=10", "today");
            keep(origin, "what=woods&area=woods/1&height=40&gap=6&density=1.5", "woods");
            keep(origin, "what=lost&kind=WOODS&chance=20", "woods");
            assertThat(get(origin + "/plan")).contains("<option value=\"today\"");
            refuse(origin, "what=spot&x=5&y=5&height=1", "mark a place on it");
            refuse(origin, "what=woods&area=woods/1&height=10&gap=60", "lowest branches");
            refuse(origin, "what=woods&area=nowhere&height=10&gap=6", "nowhere");
            refuse(origin, "what=tees&name=%3Cb%3E&base=white", "no name for tees");
            refuse(origin, "what=skyline&x=NaN&y=1&name=mill", "no number");
            refuse(origin, "what=clear", "says yes");
            keep(origin, "what=clear&sure=yes", "Nothing noted");
        }
    }

    /** The middle of the green on the chart. */
    private static String green(String origin) throws Exception {
        JsonNode areas = new ObjectMapper()
                .readTree(get(origin + "/course/areas?hole=4"))
                .get("areas");
        double best = Double.MAX_VALUE;
        String out = "";
        for (JsonNode area : areas) {
            if (area.path("kind").asText().equals("GREEN")) {
                double x = 0;
                double y = 0;
                JsonNode ring = area.path("polygons").get(0).get(0);
                for (JsonNode corner : ring) {
                    x += corner.get(0).asDouble() / ring.size();
                    y += corner.get(1).asDouble() / ring.size();
                }
                // play runs up the chart, so the hole's own green is the highest
                if (y < best) {
                    best = y;
                    out = "x=" + x + "&y=" + y;
                }
            }
        }
        return out;
    }

    private static String get(String address) throws Exception {
        return CLIENT.send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString())
                .body();
    }

    private static String found(String page, String pattern) {
        Matcher m = Pattern.compile(pattern).matcher(page);
        assertThat(m.find()).as(pattern).isTrue();
        return m.group(1);
    }

    private static HttpResponse<String> post(String origin, String note) throws Exception {
        String page = get(origin + HOLE);
        String form = "course=" + found(page, "data-course=\"([^\"]+)\"") + "&hole=4&seen="
                + found(page, "data-seen=\"(\\d+)\"") + "&" + note;
        return CLIENT.send(
                HttpRequest.newBuilder(URI.create(origin + "/course/note"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private static void keep(String origin, String note, String shown) throws Exception {
        HttpResponse<String> answer = post(origin, note);
        assertThat(answer.statusCode()).as(note + " " + answer.body()).isEqualTo(303);
        assertThat(get(origin + HOLE)).as(note).contains(shown);
    }

    private static void refuse(String origin, String note, String why) throws Exception {
        String before = found(get(origin + HOLE), "data-seen=\"(\\d+)\"");
        HttpResponse<String> answer = post(origin, note);
        assertThat(answer.statusCode()).as(note).isEqualTo(400);
        assertThat(answer.body()).contains(why);
        assertThat(found(get(origin + HOLE), "data-seen=\"(\\d+)\"")).isEqualTo(before);
    }
}
