package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Today, rounds and lessons in a real browser, and a sheet that is filled without a network. */
class BenchRecordsIT extends InBrowser {
    private static String player() {
        return String.valueOf(browser().go("/rounds").run("return document.querySelector('input[name=player]').value"));
    }

    @Test
    void aRoundIsWrittenDownWithAThumbAndLookedBackOn() {
        Browser b = browser();
        String player = player();
        b.go("/rounds/new?tier=b&player=" + player).await("#after");
        b.assertAccessible();
        b.screenshots("round-entry");
        for (int hole = 1; hole <= 9; hole++) {
            b.get("[data-more=score]").click();
            b.get("[data-choice='approach green']").click();
            b.get("[data-more=first_putt_paces]").click();
            b.get("[data-more=putts]").click();
            b.get("#after").click();
        }
        b.driver().navigate().refresh();
        b.await("#whole").click();
        assertThat(b.text("#sum")).as("a reload loses nothing").contains("(9)");
        b.run("document.getElementById('date').value = '2026-09-12';"
                + "document.getElementById('date').dispatchEvent(new Event('change'))");
        b.screenshots("round-card");
        b.get("#keep-round").click();
        assertThat(b.await("p.good").getText()).contains("New rounds kept: 1");
        assertThat(b.address()).startsWith("/rounds?player=" + player);
        b.assertAccessible();
        b.screenshots("rounds");
        b.run("[...document.querySelectorAll(\"a[href^='/rounds/review']\")].find(a => a.textContent ==="
                + " '2026-09-12').click()");
        assertThat(b.await("h1").getText()).contains("2026-09-12");
        assertThat(b.text("main")).contains("Strokes gained").contains("putts").contains("Decision, execution, luck");
        b.assertAccessible();
        b.screenshots("review");
        b.assertNoForeignRequest();
    }

    @Test
    void strokesAreTappedOnTheChart() {
        Browser b = browser();
        String player = player();
        b.go("/rounds/new?tier=d&player=" + player).await(".map svg");
        b.run("const svg = document.querySelector('.map svg'); const r ="
                + " svg.getBoundingClientRect();svg.dispatchEvent(new MouseEvent('click', {bubbles: true, clientX:"
                + " r.left + r.width / 2, clientY: r.bottom - 40}))");
        b.await(".strokes li:nth-child(1)");
        b.await(".map svg");
        b.run("const svg = document.querySelector('.map svg'); const r ="
                + " svg.getBoundingClientRect();svg.dispatchEvent(new MouseEvent('click', {bubbles: true, clientX:"
                + " r.left + r.width / 2, clientY: r.top + 90}))");
        b.await(".strokes li:nth-child(2)");
        b.assertAccessible();
        b.screenshots("round-places");
        b.get("#whole").click();
        assertThat(String.valueOf(b.get("#text").getAttribute("value")))
                .contains("lat,lon")
                .containsPattern(",tee,\\d+,,.*-?\\d+\\.\\d{6}");
    }

    @Test
    void aLessonShowsTheOptionsOnceItIsSaidWhatIsMeant() {
        Browser b = browser();
        b.go("/rounds/new?tier=d&lesson=yes&player=" + player()).await(".map svg");
        tap("r.bottom - 40");
        b.await(".strokes li:nth-child(1)");
        assertThat(b.get("[data-show='0']").isEnabled()).isFalse();
        b.get(".strokes li input[type=text]").sendKeys("driver", org.openqa.selenium.Keys.TAB.toString());
        b.get("[data-aim='0']").click();
        b.await("[data-aim='0'][aria-pressed=true]");
        b.await(".map svg");
        tap("r.top + r.height / 2");
        b.await("[data-show='0']:enabled").click();
        b.await("[data-options='0'] table");
        assertThat(b.text("[data-options='0']")).contains("Your aim: driver", "Best from here");
        b.assertAccessible();
        b.screenshots("lesson");
        b.get("#whole").click();
        assertThat(String.valueOf(b.get("#text").getAttribute("value")))
                .contains("aim_lat,aim_lon,meant_lie,as_meant")
                .containsPattern(
                        "yes,1,4,\\d+,driver,tee,\\d+,.*-?\\d+\\.\\d{6},-?\\d+\\.\\d{6},-?\\d+\\.\\d{6},-?\\d+\\.\\d{6}");
        b.assertNoForeignRequest();
    }

    /** Taps the middle of the chart at a height. */
    private static void tap(String y) {
        browser()
                .run("const svg = document.querySelector('.map svg'); const r ="
                        + " svg.getBoundingClientRect();svg.dispatchEvent(new MouseEvent('click', {bubbles: true,"
                        + " clientX: r.left + r.width / 2, clientY: "
                        + y
                        + "}))");
    }

    @Test
    void aSheetIsFilledWithoutANetworkAndTakenInOnce() throws Exception {
        Browser b = browser();
        String player = player();
        String origin = bench().origin();
        HttpResponse<String> answer = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(origin + "/rounds/sheet?tier=b&player=" + player))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        assertThat(answer.headers().firstValue("Content-Disposition"))
                .contains("attachment; filename=\"round-sheet.html\"");
        Path sheet = folder().resolve("sheet.html");
        Files.writeString(sheet, answer.body());
        Path first = filled(sheet, "first.csv");
        b.driver()
                .executeAsyncScript("const done = arguments[0]; const r = indexedDB.open('loopwright', 1);"
                        + "r.onsuccess = () => { const t = r.result.transaction('kept', 'readwrite');"
                        + "t.objectStore('kept').clear(); t.oncomplete = () => { r.result.close(); done(); }; };");
        Path second = filled(sheet, "second.csv");

        b.forgetRequests();
        assertThat(taken(player, first)).contains("New rounds kept: 1");
        assertThat(taken(player, first)).contains("Taken in before").doesNotContain("New rounds");
        assertThat(taken(player, second)).contains("New rounds kept: 1").contains("another record");
        Files.writeString(first, Files.readString(first).replaceFirst(",4,,", ",6,,"));
        b.go("/rounds?player=" + player);
        drop(first);
        b.awaitTrue("document.querySelector('h1')?.textContent === 'That did not work'");
        assertThat(b.text("main p")).contains("taken in before").contains("hole");
        b.forgetRequests();
        b.go("/today");
        b.assertAccessible();
        b.screenshots("today");
    }

    /** Fills two holes with the network off; returns the file the sheet gives back. */
    private static Path filled(Path sheet, String name) throws Exception {
        Browser b = browser();
        offline(true);
        try {
            b.driver().get(sheet.toUri().toString());
            b.await("#after");
            for (int hole = 0; hole < 2; hole++) {
                b.get("[data-more=score]").click();
                b.get("[data-more=putts]").click();
                b.get("#after").click();
            }
            b.driver().navigate().refresh();
            b.await("#whole").click();
            assertThat(b.text("#sum")).contains("(2)");
            assertThat(b.text("main"))
                    .doesNotContain("Expect")
                    .doesNotContain("Aim")
                    .doesNotContain("target");
            b.assertAccessible();
            b.screenshots("sheet");
            Path file = folder().resolve(name);
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
        Browser b = browser();
        b.go("/rounds?player=" + player);
        drop(file);
        return b.await("p.good").getText();
    }

    private static void drop(Path file) {
        Browser b = browser();
        b.run("document.querySelectorAll('details').forEach(d => d.open = true)");
        b.get("form[action='/rounds/import'] input[type=file]").sendKeys(file.toString());
        b.get("form[action='/rounds/import'] button").click();
    }
}
