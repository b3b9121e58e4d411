package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WebElement;

/** What lies round a plan, in a real browser: every answer equals that of the command line. */
class BenchAnswersIT extends InBrowser {
    /** Holes enough to see everything an answer shows. */
    private static final String ROUND = "?tees=white&target=8&holes=1,3";

    private static final String TODAY = "&today=driver:+R8+R12+L3&longer=2";
    private static final String BALLS = "driver: R8 R12 L3";

    private static JsonNode json(String verb, String... more) throws Exception {
        Path json = folder().resolve(verb + ".json");
        List<String> words = new ArrayList<>(List.of(verb, "--player", "../demo/player.json"));
        words.addAll(List.of(more));
        words.addAll(List.of("--json", json.toString()));
        Typed typed = Typed.run(words.toArray(String[]::new));
        assertThat(typed.exitCode()).as(typed.err()).isZero();
        return new ObjectMapper().readTree(json.toFile());
    }

    private static JsonNode round(String verb, String... more) throws Exception {
        List<String> words =
                new ArrayList<>(List.of("--course", "../demo/course.geojson", "--target", "8", "--holes", "1,3"));
        words.addAll(List.of(more));
        return json(verb, words.toArray(String[]::new));
    }

    private static String of(String format, JsonNode number) {
        return String.format(Locale.ROOT, format, number.asDouble());
    }

    private static void look(String name) {
        browser().assertAccessible();
        browser().screenshots(name);
        browser().assertNoForeignRequest();
    }

    @Test
    void teesAreComparedAsOnTheCommandLine() throws Exception {
        browser().go("/plan/tees" + ROUND + TODAY).await("tr[data-set]");
        JsonNode tees = round("tees", "--today", BALLS, "--plays-longer", "2");
        for (JsonNode set : tees.get("sets")) {
            assertThat(browser().text("tr[data-set='" + set.get("name").asText() + "'] .expected"))
                    .isEqualTo(of("%.1f", set.get("expected")));
        }
        assertThat(browser().text(".lead"))
                .contains("Recommended: " + tees.at("/recommended/set").asText());
        look("answer-tees");
    }

    @Test
    void whatToExpectIsThatOfTheCommandLine() throws Exception {
        browser().go("/plan/expect" + ROUND + TODAY).await("[data-usual]");
        JsonNode usual = round("expect", "--tees", "white", "--today", BALLS, "--plays-longer", "2")
                .get("usual");
        for (String count : List.of("strokes", "pars", "greens", "putts", "penaltyStrokes")) {
            assertThat(browser().text("[data-usual='" + count + "']")).isEqualTo(of("%.1f", usual.get(count)));
        }
        look("answer-expect");
    }

    @Test
    void theWedgeTableIsThatOfTheCommandLine() throws Exception {
        browser().go("/plan/wedges?target=79").await("[data-from]");
        List<String> shown = browser().all("[data-from]").stream()
                .map(cell -> cell.getText())
                .toList();
        List<String> told = new ArrayList<>();
        json("wedges").get("rows").forEach(row -> told.add(of("%.2f", row.get("expected"))));
        assertThat(shown).isEqualTo(told);
        look("answer-wedges");
    }

    @Test
    void theShortGameIsThatOfTheCommandLine() throws Exception {
        browser().go("/plan/short?target=79").await("[data-strokes]");
        JsonNode spots = json("shortgame").get("spots");
        assertThat(browser().all("[data-strokes]")).hasSize(spots.size());
        for (int i = 0; i < spots.size(); i++) {
            assertThat(browser().text("[data-strokes='" + i + "']"))
                    .isEqualTo(of("%.2f", spots.get(i).at("/ways/0/expected")));
        }
        look("answer-short");
    }

    @Test
    void theStateOfPlayAndTodaysBallsAreThoseOfTheCommandLine() throws Exception {
        browser().go("/plan/state" + ROUND + TODAY).await("svg.state");
        JsonNode plan =
                round("plan", "--tees", "white", "--objective", "target", "--today", BALLS, "--plays-longer", "2");
        assertThat(browser().text(".lead"))
                .contains(percent(plan.at("/score/pTarget/meanPlay").asDouble()))
                .contains(percent(plan.at("/score/pTarget/targetPlay").asDouble()));
        look("answer-state");
        browser()
                .go("/plan" + ROUND + "&objective=target&today=driver:+R8+R12+L3&longer=2")
                .await("#warm-up p");
        assertThat(browser().text("#warm-up"))
                .contains("3 balls")
                .contains(of("%.1f yd", plan.at("/today/balls/takenYards")))
                .contains("plays +2.0 %");
        look("plan-today");
    }

    @Test
    void theWarmUpIsReadAndTypedInTheUnitOfTheReader() throws Exception {
        String taken =
                round("plan", "--today", BALLS).at("/today/balls/takenYards").asText();
        String inMetres = String.format(Locale.ROOT, "%.1f m", 0.9144 * Double.parseDouble(taken));
        lengths("metres");
        try {
            // An address that says no unit is in yards, as it always was.
            browser().go("/plan" + ROUND + "&today=driver:+R8+R12+L3").await("#warm-up p");
            assertThat(browser().text("#warm-up")).contains(inMetres);
            browser().run("document.querySelectorAll('form.sheet details').forEach(d => d.open = true)");
            assertThat(browser().text("form.sheet")).contains("Warm-up balls: metres right or left");
            WebElement field = browser().get("input[name=today]");
            assertThat(field.getAttribute("value")).isEqualTo("driver: R7.3 R11 L2.7");
            look("plan-today-metres");
            field.clear();
            field.sendKeys("driver: R9.1");
            browser().get("form.sheet button[type=submit]").click();
            browser().await("#warm-up p");
            assertThat(browser().text("#warm-up")).contains("one ball");
            assertThat(browser().get("input[name=today]").getAttribute("value")).isEqualTo("driver: R9.1");
            String address = Objects.requireNonNull(
                    browser().get("main a[href*='today=']").getAttribute("href"));
            lengths("yards");
            browser().go(address.substring(address.indexOf("/plan"))).await("input[name=today]");
            assertThat(browser().get("input[name=today]").getAttribute("value")).isEqualTo("driver: R10");
        } finally {
            lengths("yards");
        }
    }

    private static void lengths(String unit) {
        browser().go("/data");
        browser().get("select[name=units] option[value=" + unit + "]").click();
        browser().get("form[action='/data/units'] button").click();
        assertThat(browser().text("p.good")).contains(unit);
    }

    @Test
    void aSingleHoleHasItsLinesOfEqualChanceToo() {
        browser().go("/plan/state?tees=white&target=3&holes=3").await("svg.state");
        List<WebElement> lines = browser().all("svg.state .level, svg.state .even");
        // The chances of 2, 3 and 4 strokes on this par 3 lie on both sides of 10, 25, 50, 75 and 90 %.
        assertThat(lines).hasSize(5);
        // A level stretch as wide as the words above it, or it is no line to the eye.
        assertThat(lines).allMatch(line -> line.getRect().getWidth() > 60);
        look("answer-state-one-hole");
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, share < 0.0995 ? "%.1f %%" : "%.0f %%", 100 * share);
    }

    @Test
    void finishesAmongPeopleAreThoseOfThePlan() throws Exception {
        browser().go("/plan/safety" + ROUND).await(".beware");
        int flagged = 0;
        for (JsonNode hole : round("plan", "--tees", "white").get("holes")) {
            for (JsonNode shot : hole.get("shots")) {
                for (JsonNode risk : shot.get("risks")) {
                    flagged += risk.get("flagged").asBoolean() ? 1 : 0;
                }
            }
        }
        assertThat(browser().text(".lead")).contains(flagged == 0 ? "No planned shot" : ": " + flagged);
        look("answer-safety");
    }
}
