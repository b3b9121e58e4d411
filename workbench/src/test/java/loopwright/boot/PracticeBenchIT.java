package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Practice on the bench, in a real browser: split, week, drills, log, a sheet without a network, is it working. */
class PracticeBenchIT extends InBrowser {
    private static final Path DEMO = Path.of("..", "demo");
    /** A browser's local storage was found empty after one in eight reloads of a file. */
    private static final int RELOADS = 10;

    private static String player() {
        return String.valueOf(browser().go("/practice").run("return document.querySelector('[name=player]').value"));
    }

    private static HttpResponse<byte[]> get(String address) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(bench().origin() + address))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
    }

    @Test
    void theSplitIsTheCommandLinesAndItsWeekIsPrintedAndGoesIntoACalendar() throws Exception {
        Browser b = browser();
        b.go("/practice").await("form.sheet");
        b.assertAccessible();
        b.screenshots("practice-form");
        b.run("const set = (n, v) => { document.querySelector(`[name=${n}]`).value = v; };"
                + "set('target', 4); set('holes', '2'); set('hours', 2.5); set('weeks', 6); set('must-chip', 0.5);"
                + "document.querySelector('form.sheet').requestSubmit()");
        b.await("[data-skill]");
        assertThat(b.address())
                .as("an address that can be shared")
                .contains("hours=2.5")
                .contains("must-chip=0.5")
                .doesNotContain("make=")
                .doesNotContain("tau-");
        JsonNode typed = typed();
        for (JsonNode skill : typed.get("skills")) {
            int minutes = skill.get("minutesAWeek").asInt();
            String shown = minutes == 0
                    ? "0"
                    : b.text("[data-skill='" + skill.get("skill").asText() + "']");
            assertThat(shown)
                    .as(skill.get("skill").asText())
                    .isEqualTo(minutes == 0 ? "0" : String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60));
        }
        for (String what : new String[] {"byHabit", "byPlan", "after"}) {
            assertThat(b.text("main"))
                    .contains(String.format(
                            Locale.ROOT, "%.1f", typed.get(what).get("expected").asDouble()));
        }
        assertThat(b.text("main"))
                .contains(typed.get("reasons").get(0).asText())
                .contains("not better in")
                .contains("rule of thumb");
        b.assertAccessible();
        b.screenshots("practice");
        String query = b.address().substring(b.address().indexOf('?'));
        b.go("/practice/week" + query).await(".blocks li");
        b.assertAccessible();
        b.screenshots("practice-week");
        assertThat(b.text("main")).contains("Session 1").contains("Stop at pain");
        HttpResponse<byte[]> pdf = get("/practice/week.pdf" + query);
        assertThat(new String(pdf.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        HttpResponse<byte[]> calendar = get("/practice/calendar.ics" + query + "&from=2027-05-03&at=18:30");
        assertThat(new String(calendar.body(), StandardCharsets.UTF_8))
                .startsWith("BEGIN:VCALENDAR\r\n")
                .contains("DTSTART:20270503T183000\r\n")
                .contains("RRULE:FREQ=WEEKLY;COUNT=6\r\n");
        HttpResponse<byte[]> none = get("/practice/calendar.ics" + query + "&from=soon");
        assertThat(none.statusCode()).isEqualTo(400);
        tickTwoBlocks(query);
        assertThat(b.address()).contains("weeks=5").contains("follows=yes");
        assertThat(b.text("p.good")).contains("Blocks kept: 2. Kept before: 0.");
        b.await("[data-left]");
        b.assertAccessible();
        b.screenshots("practice-next");
        tickTwoBlocks(query);
        assertThat(b.text("p.good")).as("a week sent twice counts once").contains("Blocks kept: 0. Kept before: 2.");
        b.assertNoForeignRequest();
    }

    private static void tickTwoBlocks(String query) {
        Browser b = browser();
        b.go("/practice/week" + query).await(".blocks li");
        b.run("document.querySelectorAll('[name=done]').forEach((t, i) => { t.checked = i < 2; });"
                + "document.querySelector('form[action^=\"/practice/next\"]').requestSubmit()");
        b.await("p.good");
    }

    private static JsonNode typed() throws Exception {
        Path json = folder().resolve("practice.json");
        Typed run = Typed.run(
                "practice",
                "plan",
                "--target",
                "4",
                "--holes",
                "2",
                "--hours",
                "2.5",
                "--weeks",
                "6",
                "--must",
                "chip=0.5",
                "--course",
                DEMO.resolve("course.geojson").toString(),
                "--player",
                DEMO.resolve("player.json").toString(),
                "--json",
                json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        return new ObjectMapper().readTree(json.toFile());
    }

    @Test
    void drillsAreShownLoggedWithAThumbAndSaidToWorkOnlyBeyondChance() {
        Browser b = browser();
        String player = player();
        b.go("/practice/drills?player=" + player).await("#gate");
        b.run("document.getElementById('gate').open = true");
        b.awaitTrue("document.querySelector('#gate img').naturalWidth > 0");
        assertThat(b.text("#gate")).contains("Set-up:").contains("should expect");
        b.assertAccessible();
        b.screenshots("practice-drills");
        b.go("/practice/log?drill=gate&player=" + player).await("[data-more=score]");
        b.assertAccessible();
        b.screenshots("practice-log");
        for (int i = 0; i < 12; i++) {
            b.get("[data-more=score]").click();
        }
        b.driver().navigate().refresh();
        assertThat(b.text("#score")).as("a reload loses nothing").isEqualTo("11");
        b.get("#keep").click();
        assertThat(b.await("p.good").getText()).contains("Drills kept: 1");
        assertThat(b.text("table")).contains("gate").contains("11");
        b.go("/practice/review?player=" + player);
        assertThat(b.text("main")).contains("not to be told from before yet").contains("Scores alone are slow");
        b.assertAccessible();
        b.screenshots("practice-review");
        b.assertNoForeignRequest();
    }

    @Test
    void aCoachsOwnDrillsAreTakenInShownLoggedAndTakenOutAgain() throws Exception {
        Browser b = browser();
        String player = player();
        Path own = folder().resolve("own.json");
        Files.writeString(own, """
                {"drills": [{"name": "my-ladder", "facility": "green", "minutes": 5, "purpose": "P.", "setUp": "S.",
                  "scoring": "C.", "stations": [{"putt": "past", "feet": 25, "tries": 6}]}]}
                """);
        ownDrills(player, own);
        assertThat(b.await("p.good").getText()).contains("Own drills taken in: 1.");
        assertThat(b.text("main")).contains("my-ladder");
        b.assertAccessible();
        b.go("/practice/log?drill=my-ladder&player=" + player).await("[data-more=score]");
        Files.writeString(own, Files.readString(own).replace("my-ladder", "gate"));
        ownDrills(player, own);
        b.awaitTrue("document.querySelector('h1')?.textContent === 'That did not work'");
        assertThat(b.text("main p")).contains("own.json: there is a drill \"gate\" already");
        b.forgetRequests();
        b.go("/practice/drills?player=" + player);
        b.run("document.querySelector('form[action=\"/practice/drills/erase\"]').requestSubmit()");
        assertThat(b.await("p.good").getText()).contains("Your own drills are out");
        assertThat(b.text("main")).doesNotContain("my-ladder");
    }

    private static void ownDrills(String player, Path file) {
        Browser b = browser();
        b.go("/practice/drills?player=" + player);
        b.run("document.querySelectorAll('details').forEach(d => d.open = true)");
        b.get("form[action='/practice/drills'] input[type=file]").sendKeys(file.toString());
        b.get("form[action='/practice/drills'] button").click();
    }

    @Test
    void aSheetIsFilledWithoutANetworkAndTakenInOnce() throws Exception {
        Browser b = browser();
        String player = player();
        Path sheet = folder().resolve("drill-sheet.html");
        Files.write(sheet, get("/practice/sheet?player=" + player).body());
        Path given = filled(sheet);
        assertThat(taken(player, given)).contains("Drills kept: 2. Taken in before: 0.");
        assertThat(taken(player, given)).contains("Drills kept: 0. Taken in before: 2.");
        Files.writeString(given, Files.readString(given).replaceFirst("\"score\": \\d+", "\"score\": 99"));
        Files.writeString(given, Files.readString(given).replaceAll("\"recording\": \"..", "\"recording\": \"zz"));
        drop(player, given);
        b.awaitTrue("document.querySelector('h1')?.textContent === 'That did not work'");
        assertThat(b.text("main p")).contains("A score of 99 cannot be");
        b.forgetRequests();
    }

    private static Path filled(Path sheet) throws Exception {
        Browser b = browser();
        offline(true);
        try {
            b.driver().get(sheet.toUri().toString());
            for (int drill = 0; drill < 2; drill++) {
                b.await("[data-more=score]");
                b.get("[data-more=score]").click();
                b.get("[data-more=score]").click();
                b.get("#note").sendKeys("wind");
                b.get("#keep").click();
                b.await("#played li:nth-child(" + (drill + 1) + ")");
            }
            for (int again = 0; again < RELOADS; again++) {
                b.driver().navigate().refresh();
                b.await("[data-more=score]");
                assertThat(b.all("#played li")).as("kept after a reload").hasSize(2);
            }
            b.assertAccessible();
            b.screenshots("drill-sheet");
            Path file = folder().resolve("given.json");
            Files.writeString(file, String.valueOf(b.get("#text").getAttribute("value")));
            return file;
        } finally {
            offline(false);
        }
    }

    private static void offline(boolean off) {
        browser().driver().executeCdpCommand("Network.enable", Map.of());
        browser()
                .driver()
                .executeCdpCommand(
                        "Network.emulateNetworkConditions",
                        Map.of("offline", off, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
    }

    private static String taken(String player, Path file) {
        drop(player, file);
        return browser().await("p.good").getText();
    }

    private static void drop(String player, Path file) {
        Browser b = browser();
        b.go("/practice/log?player=" + player);
        b.run("document.querySelectorAll('details').forEach(d => d.open = true)");
        b.get("form[action='/practice/log'] input[type=file]").sendKeys(file.toString());
        b.get("form[action='/practice/log'] button").click();
    }
}
