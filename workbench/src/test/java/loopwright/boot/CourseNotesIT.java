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
            draw(origin, "\"marks\":[" + mark("SKYLINE", "100,50", "old mill", "") + "]", 200);
            assertThat(get(origin + HOLE)).contains("skyline target: old mill");
            draw(
                    origin,
                    "\"marks\":[" + mark("DROP_ZONE", "150,300", "", "") + ","
                            + mark("SPOT", green, "", "\"level\":0.5") + ","
                            + mark("ARROW", green, "", "\"slope\":2.5,\"toward\":140") + "]",
                    200);
            assertThat(get(origin + HOLE))
                    .contains("dropping zones: 1", "spot heights of the green: 1", "slope arrows of the green: 1");
            draw(origin, "\"rules\":[\"DROP_ZONE\"]", 200);
            assertThat(get(origin + HOLE)).contains("Model Local Rule E-1");
            draw(origin, "\"rules\":[\"NONE\"]", 400);
            draw(origin, "\"marks\":[" + mark("SPOT", "5,5", "", "\"level\":1") + "]", 400);
            draw(origin, woods(origin, "{\"height\":40,\"gap\":6,\"density\":1.5}"), 200);
            assertThat(get(origin + HOLE)).contains("Density (1: an ordinary wood): 1.5");
            draw(origin, woods(origin, "{\"height\":10,\"gap\":60}"), 400);
            draw(origin, woods(origin, "{\"height\":\"<b>\"}"), 400);
            keep(origin, "what=nine&" + nine, "slope arrows of the green: 9");
            keep(origin, "what=tees&name=today&base=white&forward=10", "today");
            keep(origin, "what=lost&kind=WOODS&chance=20", "woods");
            assertThat(get(origin + "/plan")).contains("<option value=\"today\"");
            refuse(origin, "what=tees&name=%3Cb%3E&base=white", "no name for tees");
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
                    out = x + "," + y;
                }
            }
        }
        return out;
    }

    private static String mark(String kind, String at, String name, String numbers) {
        return "{\"id\":\"new " + kind + "\",\"kind\":\"" + kind + "\",\"at\":[" + at + "],\"name\":\"" + name
                + "\",\"numbers\":{" + numbers + "}}";
    }

    /** The first wood in view as it is, with other numbers. */
    private static String woods(String origin, String numbers) throws Exception {
        for (JsonNode area : new ObjectMapper()
                .readTree(get(origin + "/course/areas?hole=4"))
                .get("areas")) {
            if (area.path("kind").asText().equals("WOODS")) {
                return "\"drawn\":[{\"id\":" + area.get("id") + ",\"kind\":\"WOODS\",\"polygons\":"
                        + area.get("polygons") + ",\"numbers\":" + numbers + "}]";
            }
        }
        throw new AssertionError("no woods in view");
    }

    /** Sends a change of the chart. */
    private static void draw(String origin, String change, int status) throws Exception {
        String page = get(origin + HOLE);
        String seen = found(page, "data-seen=\"(\\d+)\"");
        HttpResponse<String> answer = CLIENT.send(
                HttpRequest.newBuilder(URI.create(origin + "/course/areas"))
                        .POST(HttpRequest.BodyPublishers.ofString(
                                "{\"course\":\"" + found(page, "data-course=\"([^\"]+)\"") + "\",\"hole\":4,\"seen\":"
                                        + seen + "," + change + "}"))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(change + " " + answer.body()).isEqualTo(status);
        int now = Integer.parseInt(found(get(origin + HOLE), "data-seen=\"(\\d+)\""));
        assertThat(now).isEqualTo(Integer.parseInt(seen) + (status == 200 ? 1 : 0));
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
