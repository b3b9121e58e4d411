package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.logging.Level;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.By;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A headless browser of the system; tests that need it are skipped, and say so, where there is none. */
final class Browser implements AutoCloseable {
    private static final Pattern REQUEST =
            Pattern.compile("\"method\":\"Network.requestWillBeSent\".*?\"request\":\\{.*?\"url\":\"([^\"]*)\"");
    /** Only a broken page is waited for so long; solves are slow where other work goes on beside the tests. */
    private static final Duration PATIENCE = Duration.ofMinutes(4);

    private static final int DESK = 1280;
    /** Width of a small phone. */
    private static final int PHONE = 375;

    private final ChromeDriver driver;
    private final String origin;
    private final List<String> requests = new ArrayList<>();

    private Browser(ChromeDriver driver, String origin) {
        this.driver = driver;
        this.origin = origin;
    }

    static Browser open(int port) {
        return open("http://127.0.0.1:" + port);
    }

    static Browser open(String origin) {
        Path chromium = find("chromium", "chromium-browser", "google-chrome");
        Path chromedriver = find("chromedriver", "chromium-driver");
        assumeTrue(
                chromium != null && chromedriver != null,
                "skipped: no Chromium with its driver is installed (packages chromium and chromium-driver)");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(Objects.requireNonNull(chromium).toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--disable-background-networking",
                "--disable-component-update",
                "--no-first-run",
                "--window-size=" + DESK + ",1000");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(Objects.requireNonNull(chromedriver).toFile())
                .usingAnyFreePort()
                .build();
        ChromeDriver driver = new ChromeDriver(service, options);
        driver.manage().timeouts().pageLoadTimeout(PATIENCE);
        return new Browser(driver, origin);
    }

    private static @Nullable Path find(String... names) {
        for (String folder : System.getenv("PATH").split(File.pathSeparator, -1)) {
            for (String name : names) {
                Path file = Path.of(folder, name);
                if (Files.isExecutable(file)) {
                    return file;
                }
            }
        }
        return null;
    }

    Browser go(String address) {
        driver.get(origin + address);
        return this;
    }

    WebElement get(String css) {
        return await(css);
    }

    /** Waits until something is on the page. */
    WebElement await(String css) {
        return new WebDriverWait(driver, PATIENCE)
                .until(d ->
                        d.findElements(By.cssSelector(css)).stream().findFirst().orElse(null));
    }

    /** Waits until a condition that a script tells holds. */
    void awaitTrue(String script) {
        new WebDriverWait(driver, PATIENCE)
                .ignoring(WebDriverException.class)
                .until(d -> Boolean.TRUE.equals(run("return " + script)));
    }

    List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    String text(String css) {
        return new WebDriverWait(driver, PATIENCE)
                .ignoring(StaleElementReferenceException.class)
                .until(d -> d.findElement(By.cssSelector(css)).getText());
    }

    String address() {
        return driver.getCurrentUrl().substring(origin.length());
    }

    @Nullable
    Object run(String script, Object... values) {
        return driver.executeScript(script, values);
    }

    ChromeDriver driver() {
        return driver;
    }

    /** No accessibility fault that the open rule set of the axe engine knows. */
    void assertAccessible() {
        driver.executeScript(axe());
        Object faults = driver.executeAsyncScript("const done = arguments[0];"
                + "axe.run(document, {resultTypes: ['violations']}).then(r => done(r.violations.map("
                + "v => v.id + ' ' + v.nodes.map(n => n.target + ' ' + n.failureSummary).join(' | '))));");
        assertThat((List<?>) faults).as("accessibility of " + address()).isEmpty();
    }

    private static String axe() {
        try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Everything asked for since the start came from the bench, and nothing was refused by its own policy. */
    void assertNoForeignRequest() {
        for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
            Matcher m = REQUEST.matcher(entry.getMessage());
            while (m.find()) {
                requests.add(m.group(1));
            }
        }
        assertThat(requests)
                .isNotEmpty()
                .allMatch(url ->
                        url.startsWith(origin + "/") || url.startsWith("data:") || url.startsWith("blob:" + origin));
        assertThat(driver.manage().logs().get(LogType.BROWSER).getAll())
                .as("messages of the browser")
                .noneMatch(e -> e.getMessage().contains("Content Security Policy")
                        || e.getLevel().equals(Level.SEVERE));
    }

    /** Forgets what was asked for so far: a file that was opened from the disk is no request to the bench. */
    void forgetRequests() {
        driver.manage().logs().get(LogType.PERFORMANCE);
        driver.manage().logs().get(LogType.BROWSER);
    }

    /** Pictures of the page, light and dark, at desk and phone width, for people to look at. */
    void screenshots(String name) {
        for (String scheme : List.of("light", "dark")) {
            driver.executeCdpCommand(
                    "Emulation.setEmulatedMedia",
                    Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
            for (int width : List.of(DESK, PHONE)) {
                driver.executeCdpCommand(
                        "Emulation.setDeviceMetricsOverride",
                        Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", width == PHONE));
                assertThat(((Number) Objects.requireNonNull(run("return document.documentElement.scrollWidth")))
                                .intValue())
                        .as(name + " fits into " + width + " pixels")
                        .isLessThanOrEqualTo(width);
                Object data = driver.executeCdpCommand("Page.captureScreenshot", Map.of("captureBeyondViewport", true))
                        .get("data");
                write(name + "-" + (width == PHONE ? "phone" : "desk") + "-" + scheme, String.valueOf(data));
            }
        }
        driver.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of()));
    }

    private static void write(String name, String base64) {
        try {
            Path folder = Files.createDirectories(Path.of("target", "screens"));
            Files.write(folder.resolve(name + ".png"), Base64.getDecoder().decode(base64));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        driver.quit();
    }
}
