package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The plan in a real browser, on the demo. */
class BenchPlanIT extends InBrowser {
    /** Two holes are enough to see everything a round shows. */
    private static final String PLAN = "/plan?tees=white&target=8&holes=1,3";

    /** A hole's chart once the full answer is on it. */
    private static final String SOLVED = ".chart[data-first=false][data-ready]:not(.stale)";

    @Test
    void theRoundsNumbersEqualThoseOfTheCommandLine() throws Exception {
        browser().go(PLAN).await("#score-words");
        JsonNode plan = planned("--target", "8", "--holes", "1,3");
        assertThat(browser().text("#score-words"))
                .contains(String.format(
                        Locale.ROOT, "Expect %.1f", plan.at("/score/mean").asDouble()));
        for (JsonNode hole : plan.at("/holes")) {
            assertThat(browser().text("[data-expected='" + hole.get("number").asInt() + "']"))
                    .isEqualTo(String.format(
                            Locale.ROOT, "%.2f", hole.get("expected").asDouble()));
        }
        browser().assertAccessible();
        browser().screenshots("plan");
        browser().go("/plan/hole?tees=white&target=8&hole=3").await("#expected");
        assertThat(browser().text("#expected"))
                .isEqualTo(String.format(
                        Locale.ROOT, "%.2f", plan.at("/holes/1/expected").asDouble()));
        browser().assertNoForeignRequest();
    }

    @Test
    void anAimThatIsDraggedShowsWhatItCosts() {
        browser().go("/plan/hole?tees=white&target=79&hole=1").await(SOLVED);
        browser().assertAccessible();
        browser().screenshots("hole");
        browser().get("#contours").click();
        browser().await(".contours.shown:not(.stale) text");
        assertThat(browser().all(".contours.shown text").size()).isGreaterThan(2);
        browser().screenshots("hole-contours");
        browser().get("#no-lines").click();
        String planned = browser().text("#answer");
        new Actions(browser().driver())
                .dragAndDropBy(browser().get(".handle.aim"), 45, 0)
                .perform();
        String cost = browser().await("#aim-cost").getText();
        assertThat(cost).contains("it costs").contains("strokes");
        browser().screenshots("hole-aim");
        browser().assertAccessible();
        browser().get("[data-back]").click();
        assertThat(browser().text("#answer")).isEqualTo(planned);
    }

    @Test
    void theBallMovesByArrowKeys() {
        browser().go("/plan/hole?tees=white&target=79&hole=1").await(SOLVED);
        WebElement ball = browser().get(".handle.ball");
        int before = yardsLeft(ball);
        browser().run("arguments[0].focus()", ball);
        new Actions(browser().driver())
                .keyDown(Keys.SHIFT)
                .sendKeys(Keys.ARROW_UP.toString().repeat(10))
                .keyUp(Keys.SHIFT)
                .perform();
        browser()
                .awaitTrue("!document.querySelector('.chart').classList.contains('stale')"
                        + " && document.querySelector('#answer table') !== null");
        assertThat(yardsLeft(ball)).isLessThan(before - 80);
        assertThat(browser().text("#answer h2")).contains("from the hole");
    }

    @Test
    void theStrokesOverTheAimsStandOnTheChartAndFollowTheBall() throws Exception {
        Browser b = browser();
        b.go("/plan/hole?tees=white&target=79&hole=1").await(SOLVED);
        b.get("#aims").click();
        b.await(".aims.shown text");
        b.awaitTrue(AIMS_THERE);
        assertThat(b.all(".aims text").stream().map(WebElement::getText))
                .as("numbers on the lines")
                .anyMatch(t -> t.matches("\\d\\.\\d+"));
        JsonNode tee = planned("--target", "4", "--holes", "1", "--how-sure").at("/holes/0/shots/0");
        String row = String.valueOf(b.run("return [...document.querySelectorAll('#aim-table tbody tr')]"
                + ".find(r => r.cells[0].textContent.endsWith(', "
                + tee.get("club").asText()
                + "')).cells[5].textContent"));
        assertThat(row)
                .as("the planned aim, in the middle")
                .isEqualTo(
                        String.format(Locale.ROOT, "%.2f", tee.get("expected").asDouble()));
        b.assertAccessible();
        b.screenshots("hole-aims");
        String before = b.text("#aim-table caption");
        WebElement ball = b.get(".handle.ball");
        b.run("arguments[0].focus()", ball);
        new Actions(b.driver())
                .keyDown(Keys.SHIFT)
                .sendKeys(Keys.ARROW_UP.toString().repeat(20))
                .keyUp(Keys.SHIFT)
                .perform();
        b.awaitTrue("document.querySelector('#aim-table caption').textContent !== '" + before + "'");
        b.awaitTrue(AIMS_THERE);
        b.screenshots("hole-aims-approach");
        b.get("#no-lines").click();
        assertThat(b.get("#aim-table").isDisplayed()).isFalse();
    }

    /** Nothing is being worked out, and the lines are those of where the ball is now. */
    private static final String AIMS_THERE = "!document.querySelector('.chart.stale, .aims.stale, #aim-table.stale')"
            + " && document.querySelector('#aim-table caption') !== null";

    @Test
    void anyTwoOptionsAreComparedWithHowSureItIs() throws Exception {
        Browser b = browser();
        b.go("/plan/hole?tees=white&target=79&hole=1").await(SOLVED);
        JsonNode beats = planned("--target", "4", "--holes", "1", "--how-sure").at("/howSure/beats/0");
        b.get("[data-from]").click();
        b.await("table.ways");
        String next = beats.get("next").asText();
        assertThat(b.get("[name=first]:checked").getAttribute("value"))
                .isEqualTo(beats.get("club").asText());
        b.get("[name=second][value='" + next + "']").click();
        b.await("#pair-chance[data-ready]");
        assertThat(b.text("#pair-difference")).contains("strokes fewer, give or take");
        assertThat(b.all("#pair tbody tr").size())
                .as("strokes, and where each finishes")
                .isGreaterThan(2);
        b.assertAccessible();
        b.screenshots("hole-pair");
        // asked for the plan's own aim and the next best: the command line's number
        String said = String.valueOf(b.driver()
                .executeAsyncScript(
                        "const done = arguments[1]; const at = n => document.querySelector('.handle.' + n)"
                                + ".getAttribute('transform').match(/-?[\\d.]+/g); document.querySelector('[data-back]').click();"
                                + "const r = arguments[0]; const q = document.querySelector('.chart').dataset.query;"
                                + "fetch(`/plan/hole/chance?${q}&x=${at('ball')[0]}&y=${at('ball')[1]}"
                                + "&club=${r.club}&ax=${at('aim')[0]}&ay=${at('aim')[1]}"
                                + "&club2=${r.next}&ax2=${r.x}&ay2=${r.y}`).then(a => a.text()).then(done)",
                        Map.of(
                                "club", beats.get("club").asText(),
                                "next", next,
                                "x", attribute(next, "data-x"),
                                "y", attribute(next, "data-y"))));
        double chance = beats.get("p").asDouble();
        assertThat(said)
                .contains("the first is the better one with a probability of "
                        + (chance > 0.99 ? "more than 99 %" : String.format(Locale.ROOT, "%.0f %%", 100 * chance)));
        b.assertNoForeignRequest();
    }

    private static String attribute(String club, String name) {
        return String.valueOf(
                browser().get("[name=second][value='" + club + "']").getAttribute(name));
    }

    /** The command line's plan of the demo from its white tees. */
    private static JsonNode planned(String... asked) throws Exception {
        Path json = folder().resolve("planned.json");
        List<String> words = new ArrayList<>(List.of(
                "plan",
                "--course",
                "../demo/course.geojson",
                "--player",
                "../demo/player.json",
                "--tees",
                "white",
                "--json",
                json.toString()));
        words.addAll(List.of(asked));
        Typed typed = Typed.run(words.toArray(String[]::new));
        assertThat(typed.exitCode()).as(typed.err()).isZero();
        return new ObjectMapper().readTree(json.toFile());
    }

    private static int yardsLeft(WebElement handle) {
        return Integer.parseInt(String.valueOf(handle.getAttribute("aria-valuenow")));
    }

    @Test
    void aHoleCutElsewhereIsSolvedAgainUnderAnAddressOfItsOwn() {
        browser().go("/plan/hole?tees=white&target=79&hole=3").await(SOLVED);
        new Actions(browser().driver())
                .dragAndDropBy(browser().get(".handle.pin"), 5, 5)
                .perform();
        browser().awaitTrue("location.search.includes('location=3')");
        assertThat(browser().await("#expected").getText()).matches("\\d\\.\\d\\d");
        browser().driver().navigate().back();
        assertThat(browser().address()).doesNotContain("location");
        browser().await("#expected");
    }

    @Test
    void theWindIsTurnedAndTheHoleFollows() throws Exception {
        browser().go("/plan/hole?tees=white&target=79&hole=3").await(SOLVED);
        String still = browser().text("#expected");
        type("#wind-from", "270");
        type("#wind-speed", "15");
        browser().awaitTrue("location.search.includes('wind=6.7056') && location.search.includes('from=270')");
        browser().await(SOLVED);
        Path json = folder().resolve("wind.json");
        Typed typed = Typed.run(
                "plan",
                "--course",
                "../demo/course.geojson",
                "--player",
                "../demo/player.json",
                "--tees",
                "white",
                "--target",
                "3",
                "--holes",
                "3",
                "--wind",
                "15 mph from 270",
                "--json",
                json.toString());
        assertThat(typed.exitCode()).as(typed.err()).isZero();
        JsonNode plan = new ObjectMapper().readTree(json.toFile());
        assertThat(browser().text("#expected"))
                .isNotEqualTo(still)
                .isEqualTo(String.format(
                        Locale.ROOT, "%.2f", plan.at("/holes/0/expected").asDouble()));
        assertThat(browser().text("#answer")).contains("Plays").contains("wind");
        browser().assertAccessible();
        browser().screenshots("hole-wind");
        browser().driver().navigate().back();
        browser().awaitTrue("document.querySelector('#expected')?.textContent === '" + still + "'");
        browser().assertNoForeignRequest();
    }

    private static void type(String css, String value) {
        WebElement field = browser().get(css);
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), value, Keys.TAB.toString());
    }

    @Test
    void theRoundIsPlayedForTheTargetAndSaysHowSureItIs() {
        browser()
                .go("/plan?tees=white&target=3&holes=3&objective=target&sure=yes")
                .await("#target-chance");
        assertThat(browser().text(".lead")).contains("playing for the target").contains(" to ");
        assertThat(browser().text("main"))
                .contains("State of play")
                .contains("Measuring")
                .contains("Not yet calibrated");
        browser().assertAccessible();
        browser().screenshots("plan-target");
    }

    @Test
    void aNetTargetAsksForTheHandicap() {
        browser().go("/plan?tees=white&target=3&holes=3&counting=net");
        assertThat(browser().text("main")).contains("A net target needs a playing handicap, and none was given");
        browser().forgetRequests(); // the browser notes the refusal
        browser()
                .go("/plan?tees=white&target=3&holes=3&counting=net&handicap=0")
                .await("#score-words");
        assertThat(browser().get("input[name=handicap]").getAttribute("value")).isEqualTo("0");
        browser().go("/plan?tees=white&target=3&holes=3");
        assertThat(browser().get("input[name=handicap]").getAttribute("value")).isEmpty();
    }

    @Test
    void aSolveIsStoppedAndStartedAgain() {
        browser().go("/plan?tees=blue&target=79").await(".job button").click();
        browser().await(".job.stopped");
        assertThat(browser().text(".job [role=status]")).startsWith("Stopped");
        browser().go("/plan?tees=blue&target=4&holes=3").await("#score-words");
    }
}
