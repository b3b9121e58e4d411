package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import loopwright.course.AreaKind;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** Course, player, green and data in a real browser. */
class BenchPlacesIT extends InBrowser {
    private static final String SCRIPT = "<script>document.title='broken'</script>";

    @Test
    void aMapIsTakenInAndAnAreaMendedCutAndTakenBack() {
        Browser b = browser();
        b.go("/course");
        b.get("form[action='/course/new'] input[type=file]")
                .sendKeys(Path.of("../demo/course.geojson")
                        .toAbsolutePath()
                        .normalize()
                        .toString());
        b.get("form[action='/course/new'] button").click();
        assertThat(b.await("p.good").getText()).contains("was taken in");
        b.assertAccessible();
        b.screenshots("course");
        b.get("tbody a").click();
        b.await(".editor[data-ready]");
        WebElement bunker = b.await(".area[aria-label^='bunker']");
        b.run("arguments[0].focus()", bunker);
        Actions keys = new Actions(b.driver());
        keys.sendKeys(Keys.ENTER).perform();
        String before = b.await(".area.chosen").getAttribute("d");
        new Actions(b.driver()).sendKeys(Keys.ARROW_RIGHT).perform();
        assertThat(b.get(".area.chosen").getAttribute("d")).isNotEqualTo(before);
        b.get("#undo").click();
        assertThat(b.get(".area.chosen").getAttribute("d")).isEqualTo(before);
        b.get("#redo").click();
        b.assertAccessible();
        b.screenshots("course-hole");
        b.get("#save").click();
        b.awaitTrue("document.querySelector('.editor[data-ready]')?.dataset.seen === '2'");
        b.get("form[action='/course/survey'] input[name=trees]").click();
        b.get("form[action='/course/survey'] button").click();
        assertThat(b.await("p.good").getText()).contains("survey");
        b.assertNoForeignRequest();
    }

    @Test
    void marksAreMovedAddedAndDescribedAndTheTableFollows() {
        Browser b = browser();
        b.go("/course");
        String id = String.valueOf(
                b.get("form[action='/course/image'] input[name=course]").getAttribute("value"));
        b.go("/course?course=" + id + "&hole=7");
        b.await(".editor[data-ready]");
        String seen = b.get(".editor").getAttribute("data-seen");
        WebElement tee = b.get(".mark[aria-label='tee, white']");
        String before = tee.getAttribute("transform");
        b.run("arguments[0].focus()", tee);
        new Actions(b.driver()).sendKeys(Keys.ENTER).sendKeys(Keys.ARROW_RIGHT).perform();
        assertThat(b.get(".mark.tee.chosen").getAttribute("transform")).isNotEqualTo(before);
        b.get("#undo").click();
        assertThat(b.get(".mark.tee.chosen").getAttribute("transform")).isEqualTo(before);
        b.get("#redo").click();
        int bends = b.all(".mark.bend").size();
        choose(b, "BEND");
        assertThat(b.all(".mark.bend")).hasSize(bends + 1);
        new Actions(b.driver())
                .dragAndDropBy(b.get(".mark.bend.chosen"), 30, 10)
                .perform();
        choose(b, "SKYLINE");
        b.get("#mark-fields [data-what=name]").sendKeys("mill " + SCRIPT);
        choose(b, "TREE");
        WebElement density = b.get("#mark-fields [data-what=density]");
        density.clear();
        density.sendKeys("2.5", Keys.TAB);
        choose(b, "TEE");
        b.get("#mark-fields [data-what=name]").sendKeys("today");
        b.assertAccessible();
        b.screenshots("course-marks");
        b.get("#save").click();
        b.awaitTrue("document.querySelector('.editor[data-ready]')?.dataset.seen > " + seen);
        assertThat(b.all(".mark[aria-label='skyline target, mill " + SCRIPT.replace("'", "\\'") + "']"))
                .hasSize(1);
        assertThat(b.all(".mark[aria-label='tee, today']")).hasSize(1);
        b.get("details:has(table) summary").click();
        assertThat(b.text("details table"))
                .contains("skyline target, mill " + SCRIPT)
                .contains("tee, today");
        assertThat(b.text("details table")).contains("Density (1: an ordinary wood): 2.5");
        b.assertAccessible();
        b.screenshots("course-marks-table");
        WebElement flag = b.get(".mark.hole_location");
        b.run("arguments[0].focus()", flag);
        new Actions(b.driver())
                .sendKeys(Keys.ENTER, Keys.DELETE)
                .keyDown(Keys.SHIFT)
                .sendKeys(Keys.ARROW_LEFT, Keys.ARROW_LEFT, Keys.ARROW_LEFT, Keys.ARROW_LEFT)
                .keyUp(Keys.SHIFT)
                .perform();
        b.get("#save").click();
        b.awaitTrue("document.getElementById('edit-said').textContent.includes('must lie on its green')");
        b.forgetRequests(); // the refusal is a message of the browser, and meant
        b.get("#undo").click();
        b.run("window.onbeforeunload = null");
    }

    @Test
    void areasOfEveryKindAreDrawnWithPenAndKeyboardAndSnap() {
        Browser b = browser();
        b.go("/course");
        String id = String.valueOf(
                b.get("form[action='/course/image'] input[name=course]").getAttribute("value"));
        b.go("/course?course=" + id + "&hole=5");
        b.await(".editor[data-ready]");
        String seen = b.get(".editor").getAttribute("data-seen");
        List<String> kinds = b.all("#kind option").stream()
                .map(o -> String.valueOf(o.getAttribute("value")))
                .toList();
        assertThat(kinds).hasSize(AreaKind.values().length + 1).contains("BOUNDARY");
        for (int i = 0; i < kinds.size(); i++) {
            b.get("#draw").click();
            new Actions(b.driver())
                    .sendKeys(Keys.ARROW_LEFT.toString().repeat(i))
                    .sendKeys(" ", Keys.ARROW_UP, Keys.ARROW_UP, " ", Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, " ")
                    .sendKeys(Keys.ENTER)
                    .perform();
            b.get("#kind option[value=" + kinds.get(i) + "]").click();
        }
        assertThat(b.all(".area[data-area^='drawn/']")).hasSize(AreaKind.values().length);
        assertThat(b.all(".area.border")).hasSize(1);
        drawAWoodBesideAnEdge(b);
        b.assertAccessible();
        b.screenshots("course-drawn");
        b.get("#draw-line").click();
        b.get("#line-width").clear();
        b.get("#line-width").sendKeys("4");
        b.run("document.querySelector('.pen').focus()");
        String up = Keys.ARROW_UP.toString().repeat(12);
        new Actions(b.driver())
                .sendKeys(" ", up, " ", Keys.BACK_SPACE, up, " ", Keys.ENTER)
                .perform();
        b.await(".area.chosen");
        b.get("#kind option[value=PATH]").click();
        b.get("#rules input[value=PREFERRED_LIES]").click();
        b.get("#undo").click();
        assertThat(b.get("#rules input[value=PREFERRED_LIES]").isSelected()).isFalse();
        b.get("#redo").click();
        b.get("#save").click();
        b.awaitTrue("document.querySelector('.editor[data-ready]')?.dataset.seen > " + seen);
        assertThat(b.all(".area[data-area^='drawn/']")).hasSize(AreaKind.values().length + 2);
        assertThat(b.get("#rules input[value=PREFERRED_LIES]").isSelected()).isTrue();
        WebElement wood = b.get(".area[aria-label^='woods drawn/']");
        b.run("arguments[0].focus()", wood);
        new Actions(b.driver()).sendKeys(Keys.ENTER).perform();
        assertThat(b.get("#area-fields [data-what=height]").isDisplayed()).isTrue();
        assertThat(b.get("#area-fields [data-what=depth]").isDisplayed()).isFalse();
        b.assertNoForeignRequest();
    }

    /** By pointer: the first corner a little off the edge of the fairway lies on it afterwards. */
    private static void drawAWoodBesideAnEdge(Browser b) {
        b.get("#draw").click();
        Object[] near = ((List<?>) Objects.requireNonNull(b.run("const svg = document.querySelector('.editor svg');"
                        + "const d = document.querySelector(\".area[aria-label^='fairway']\").getAttribute('d');"
                        + "const [p, q] = d.match(/M([^L]*)L([^LZ]*)/).slice(1).map(t => t.split(' ').map(Number));"
                        + "const yard = Number(svg.dataset.unit);"
                        + "const middle = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];"
                        + "const length = Math.hypot(q[0] - p[0], q[1] - p[1]);"
                        + "window.edge = [p, q];"
                        + "const at = [middle[0] - (q[1] - p[1]) / length * yard, middle[1] + (q[0] - p[0]) / length * yard];"
                        + "const m = svg.getScreenCTM();"
                        + "return [length / yard, ...at.map((v, i) => i ? v * m.d + m.f : v * m.a + m.e)];")))
                .toArray();
        // else a corner lies nearer than the edge
        assertThat(((Number) near[0]).doubleValue()).isGreaterThan(4);
        Actions pen = new Actions(b.driver());
        int x = ((Number) near[1]).intValue();
        int y = ((Number) near[2]).intValue();
        pen.moveToLocation(x, y).click();
        pen.moveToLocation(x + 60, y).click();
        pen.moveToLocation(x + 60, y + 60).click();
        pen.moveToLocation(x + 60, y + 60).click().perform();
        Object off = b.run("const c = document.querySelector(\".corner[data-corner='0 0 0']\");"
                + "const at = [c.cx.baseVal.value, c.cy.baseVal.value]; const [p, q] = window.edge;"
                + "return Math.abs((q[0] - p[0]) * (at[1] - p[1]) - (q[1] - p[1]) * (at[0] - p[0]))"
                + " / Math.hypot(q[0] - p[0], q[1] - p[1]);");
        // the path is written to a tenth of a point
        assertThat(((Number) Objects.requireNonNull(off)).doubleValue()).isLessThan(0.2);
        b.get("#kind option[value=WOODS]").click();
        for (String[] said : new String[][] {{"height", "50"}, {"gap", "9"}, {"lost", "30"}}) {
            b.get("#area-fields [data-what=" + said[0] + "]").sendKeys(said[1]);
        }
    }

    private static void choose(Browser b, String kind) {
        b.get("#mark-kind option[value=" + kind + "]").click();
        b.get("#mark-add").click();
    }

    @Test
    void anImageLiesUnderTheAreasAndIsTakenAway() throws Exception {
        Browser b = browser();
        b.go("/course");
        b.get("form[action='/course/image'] input[type=file]")
                .sendKeys(picture("from <b>above.png").toString());
        b.get("input[name=upperLeft]").sendKeys("-33.3940, -128.6070");
        b.get("input[name=lowerRight]").sendKeys("-33.4055 -128.5925");
        b.get("form[action='/course/image'] button").click();
        assertThat(b.await("p.good").getText()).contains("from <b>above.png lies under the course");
        b.assertAccessible();
        b.screenshots("course-image");
        String id = String.valueOf(
                b.get("form[action='/course/image'] input[name=course]").getAttribute("value"));
        b.go("/course?course=" + id + "&hole=4");
        b.await(".editor[data-ready]");
        b.awaitTrue("performance.getEntriesByType('resource').some(e => e.name.includes('/course/image.png')"
                + " && e.responseStatus === 200)");
        assertThat(b.all("svg.over-photo")).hasSize(1);
        b.assertAccessible();
        b.screenshots("course-hole-image");
        b.get("#photo").click();
        assertThat(b.all("svg.over-photo")).isEmpty();
        assertThat(b.address()).contains("image=hidden");
        b.driver().navigate().refresh();
        b.await(".editor[data-ready]");
        assertThat(b.get("#photo").getAttribute("aria-pressed")).isEqualTo("false");
        b.go("/course?course=" + id + "&hole=0");
        b.await(".editor[data-ready]");
        int areas = b.all(".area:not(.border)").size();
        assertThat(areas).isGreaterThan(50);
        b.get("details:has(table) summary").click();
        assertThat(b.all("details table tbody tr").size()).isGreaterThanOrEqualTo(areas);
        b.assertAccessible();
        b.screenshots("course-whole-image");
        b.go("/course?course=" + id);
        replaceTakeAwayAndLayAgain(b, id);
        b.get("form[action='/course/image/erase'] button").click();
        b.awaitTrue("document.querySelectorAll(\"form[action='/course/image/erase']\").length === 1");
        b.get("form[action='/course/image/erase'] button").click();
        b.awaitTrue("document.querySelectorAll(\"form[action='/course/image/erase']\").length === 0");
        b.assertNoForeignRequest();
    }

    private static void replaceTakeAwayAndLayAgain(Browser b, String id) throws IOException {
        b.get("form[action='/course/image'] input[type=file]")
                .sendKeys(picture("newer.png").toString());
        b.get("input[name=upperLeft]").sendKeys("-33.3940, -128.6070");
        b.get("input[name=lowerRight]").sendKeys("-33.4055 -128.5925");
        b.get("form[action='/course/image'] button").click();
        b.awaitTrue("document.querySelector('p.good')?.textContent.includes('newer.png')");
        assertThat(b.all("form[action='/course/image/show']")).hasSize(2);
        assertThat(b.text("main")).contains("from <b>above.png");
        b.assertAccessible();
        b.screenshots("course-images");
        b.get("form[action='/course/image/show'] button").click();
        b.awaitTrue("document.querySelector('p.good')?.textContent.includes('No image')");
        b.go("/course?course=" + id + "&hole=4");
        b.await(".editor[data-ready]");
        assertThat(b.all(".photo")).isEmpty();
        b.go("/course?course=" + id);
        b.all("form[action='/course/image/show'] button").get(1).click();
        b.awaitTrue("document.querySelector('p.good')?.textContent.includes('under the course again')");
        b.go("/course?course=" + id + "&hole=4");
        b.await(".editor[data-ready]");
        assertThat(b.all(".photo")).hasSize(1);
        b.go("/course?course=" + id);
    }

    @Test
    void heightsAreTakenInAsANewVersion() throws Exception {
        Browser b = browser();
        // cells of some 4 m in degrees that rise to the north
        StringBuilder grid =
                new StringBuilder("ncols 400\nnrows 400\nxllcorner -128.608\nyllcorner -33.408\ncellsize 0.00004\n");
        for (int row = 0; row < 400; row++) {
            grid.append((400 - row + " ").repeat(400)).append('\n');
        }
        Path file = Files.writeString(folder().resolve("ground.asc"), grid.toString());
        b.go("/course");
        assertThat(b.text("main")).contains("the course is taken as flat");
        b.get("form[action='/course/heights'] input[type=file]").sendKeys(file.toString());
        b.get("form[action='/course/heights'] button").click();
        assertThat(b.await("p.good").getText()).contains("were taken in").contains("fine enough");
        assertThat(b.text("main")).contains("heights of the ground");
        b.assertAccessible();
        Files.writeString(file, "no raster");
        b.get("form[action='/course/heights'] input[type=file]").sendKeys(file.toString());
        b.get("form[action='/course/heights'] button").click();
        b.awaitTrue("document.querySelector('h1')?.textContent === 'That did not work'");
        assertThat(b.text("main p")).contains("ground.asc").contains("accepted are");
        b.forgetRequests(); // the refusal is meant
    }

    /** Something like a photograph: mottled, so that what shows through can be told from the paper. */
    private static Path picture(String name) throws IOException {
        BufferedImage image = new BufferedImage(1200, 1000, BufferedImage.TYPE_INT_RGB);
        SplittableRandom random = new SplittableRandom(7);
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                int grain = random.nextInt(30) + (int) (20 * Math.sin(x / 37.0) * Math.cos(y / 23.0));
                image.setRGB(x, y, new Color(80 + grain, 110 + grain, 60 + grain / 2 + 10).getRGB());
            }
        }
        Path file = folder().resolve(name);
        ImageIO.write(image, "png", file.toFile());
        return file;
    }

    @Test
    void aPlayerIsInterviewedAndMeasured() throws Exception {
        Browser b = browser();
        b.go("/player/new");
        b.assertAccessible();
        b.get("input[name=name]").sendKeys("Ann " + SCRIPT);
        b.get("input[name=level]").sendKeys("95");
        b.get("input[name=driver]").sendKeys("210");
        b.get("textarea[name=counts]").sendKeys("10 drives: 6 inside 30 yd, 3 right, 1 topped");
        b.get("main form button").click();
        assertThat(b.await("p.good").getText()).contains("was added");
        assertThat(b.text("h1")).isEqualTo("Ann " + SCRIPT);
        assertThat(b.driver().getTitle()).startsWith("Ann");
        assertThat(b.text("main table")).contains("driver").contains("(");
        Path shots = folder().resolve("seven.csv");
        Files.writeString(shots, "club,carry_yd,side_yd\n7-iron,140,3\n7-iron,135,-8\n7-iron,143,10\n7-iron,120,2\n");
        b.get("form[action='/player/list'] input[type=file]").sendKeys(shots.toString());
        b.get("form[action='/player/list'] button").click();
        b.awaitTrue("document.querySelector('p.good')?.textContent.includes('version 2')");
        assertThat(b.text("main")).contains("seven.csv: shots, 4 rows");
        assertThat(picture(b)).contains("squares of 10 yards").contains(" yd<");
        b.get("input[name=teeFour]").sendKeys("3-wood");
        b.get("select[name=aim] option[value=middle]").click();
        b.get("input[name=layUp]").sendKeys("100");
        b.get("form[action='/player/answers'] button").click();
        b.awaitTrue("document.querySelector('p.good')?.textContent.includes('version 3')");
        assertThat(b.get("input[name=teeFour]").getAttribute("value")).isEqualTo("3-wood");
        assertThat(b.get("select[name=aim]").getAttribute("value")).isEqualTo("middle");
        b.assertAccessible();
        b.screenshots("player");
        b.assertNoForeignRequest();
    }

    /** The picture of the page as text. */
    private static String picture(Browser b) {
        return String.valueOf(b.run("const r = new XMLHttpRequest(); r.open('GET',"
                + " document.querySelector('img.picture').src, false); r.send(); return r.responseText;"));
    }

    @Test
    void aWrongAnswerIsNamedAndChangesNothing() {
        Browser b = browser();
        b.go("/player/new");
        b.get("input[name=level]").sendKeys("ninety");
        b.get("main form button").click();
        b.awaitTrue("document.querySelector('h1')?.textContent === 'That did not work'");
        assertThat(b.text("main p")).contains("\"ninety\"").contains("60 to 130");
        b.forgetRequests(); // the refusal is meant
    }

    @Test
    void aPuttFollowsTheBallAndClaimsNoBreakWithoutASlope() {
        Browser b = browser();
        b.go("/green?below=12&slope=2&falls=9");
        assertThat(b.text("#answer table")).contains("Break").contains("right of its centre");
        assertThat(b.text("main")).contains("The side to leave an approach").contains("o'clock");
        String odds = b.text("#answer table");
        new Actions(b.driver()).dragAndDropBy(b.get(".pad .ball"), 60, 20).perform();
        b.awaitTrue("!document.querySelector('#answer').classList.contains('stale')");
        assertThat(b.text("#answer table")).isNotEqualTo(odds);
        b.assertAccessible();
        b.screenshots("green");
        b.go("/green?below=12");
        assertThat(b.text("#answer")).contains("Slope not measured").doesNotContain("Break");
    }

    @Test
    void unitsAreChosenAndEverythingIsCarriedOut() {
        Browser b = browser();
        b.go("/data");
        b.assertAccessible();
        b.screenshots("data");
        b.get("select[name=units] option[value=metres]").click();
        b.get("select[name='units.green'] option[value=metres]").click();
        b.get("form[action='/data/units'] button").click();
        assertThat(b.await("p.good").getText()).contains("metres");
        b.go("/course");
        assertThat(b.text("table")).contains(" m").doesNotContain(" yd");
        b.go("/player");
        assertThat(picture(b)).contains("squares of 10 metres").doesNotContain(" yd<");
        b.go("/player/new");
        assertThat(b.text("main form")).contains("Driver carry, m").doesNotContain("Driver carry, yd");
        b.go("/green?below=12");
        assertThat(b.text("form.sheet")).contains("Ball: metres below the hole").doesNotContain("Ball: feet");
        assertThat(b.get("input[name=below]").getAttribute("value")).isEqualTo("3.66");
        String odds = b.text("#answer");
        b.run("arguments[0].focus()", b.get(".pad .ball"));
        new Actions(b.driver()).sendKeys(Keys.ARROW_DOWN).perform();
        b.awaitTrue("location.search.includes('below=3.91&units=m_m')"
                + " && !document.querySelector('#answer').classList.contains('stale')");
        assertThat(b.text("#answer")).isNotEqualTo(odds);
        String farther = b.text("#answer");
        b.driver().navigate().refresh();
        assertThat(b.text("#answer")).as("an address of metres, loaded again").isEqualTo(farther);
        b.go("/data");
        b.get("select[name=units] option[value=yards]").click();
        b.get("select[name='units.green'] option[value=feet]").click();
        b.get("form[action='/data/units'] button").click();
        b.await("p.good");
        b.go("/data/ledger");
        assertThat(b.all("table").size()).isGreaterThan(3);
        b.assertAccessible();
        b.screenshots("ledger");
        List<WebElement> links = b.driver().findElements(By.cssSelector("nav a"));
        assertThat(links).hasSizeGreaterThanOrEqualTo(5);
        b.assertNoForeignRequest();
    }
}
