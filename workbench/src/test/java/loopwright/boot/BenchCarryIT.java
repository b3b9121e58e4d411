package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WindowType;

/** Carrying data out and in through the browser; a second tab, a reload in the middle of a solve, a cancelled one. */
class BenchCarryIT extends InBrowser {
    private static final String PLAN = "/plan?tees=white&target=3&holes=3";

    @Test
    void everythingIsCarriedOutErasedAndRestored() throws Exception {
        Browser b = browser();
        String link = b.go("/data").get("a[href='/data/export?all=1']").getAttribute("href");
        Path zip = folder().resolve("backup.zip");
        HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(String.valueOf(link))).build(),
                        HttpResponse.BodyHandlers.ofFile(zip));
        assertThat(Files.size(zip)).isPositive();
        String kept = b.text("table");
        b.get("select[name=what] option[value='all:']").click();
        b.get("form[action='/data/erase'] input[name=sure]").click();
        b.get("form[action='/data/erase'] button").click();
        b.await("p.good");
        assertThat(b.text("main")).doesNotContain("Export invented");
        b.get("form[action='/data/restore'] input[type=file]").sendKeys(zip.toString());
        b.get("form[action='/data/restore'] input[name=sure]").click();
        b.get("form[action='/data/restore'] button").click();
        b.await("p.good");
        assertThat(b.text("table")).isEqualTo(kept);
        b.assertNoForeignRequest();
    }

    @Test
    void aSecondTabAndAReloadJoinTheSameSolveAndDoubleNothing() {
        Browser b = browser();
        b.go(PLAN).await(".job, #score-words");
        String first = b.driver().getWindowHandle();
        b.driver().navigate().refresh();
        b.driver().switchTo().newWindow(WindowType.TAB);
        b.go(PLAN).await("#score-words");
        String words = b.text("#score-words");
        b.driver().close();
        b.driver().switchTo().window(first);
        assertThat(b.text("#score-words")).isEqualTo(words);
        b.go("/data");
        assertThat(b.run("return [...document.querySelectorAll('a')].filter(a =>"
                        + " a.href.includes('target=3&holes=3')).length"))
                .as("one plan is kept")
                .isEqualTo(1L);
        b.driver().navigate().back();
        assertThat(b.text("#score-words")).isEqualTo(words);
    }

    @Test
    void theFirstPageIsSmallAndQuick() {
        Browser b = browser();
        b.go("/today").await("h1");
        b.go("/plan").await("h1");
        for (String page : new String[] {"/today", "/plan"}) {
            b.go(page).await("h1");
            Object told = b.run("const n = performance.getEntriesByType('navigation')[0];return"
                    + " performance.getEntriesByType('resource').concat(n).reduce((s, e) => s + e.transferSize, 0) + '"
                    + " bytes, ' + n.domInteractive.toFixed(0) + ' ms to use it'");
            System.out.printf(Locale.ROOT, "%s: %s%n", page, told);
            // the issue allows 300 kB; times are reported, not asserted
            assertThat(Integer.parseInt(String.valueOf(told).split(" ", 2)[0])).isLessThan(300_000);
        }
    }
}
