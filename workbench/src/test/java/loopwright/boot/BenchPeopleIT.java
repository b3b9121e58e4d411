package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import loopwright.action.BenchStore;
import loopwright.cli.StoreOptions;
import loopwright.web.Doors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logging in, people and invitations in a real browser, on a bench that others reach. */
class BenchPeopleIT {
    /** A loopback address that is not this computer's own name, so that everybody has to log in. */
    private static final String HOST = "127.0.0.2";

    private static final String PASSWORD = "four plain words here";

    @TempDir
    private static Path folder;

    private static @Nullable Bench bench;
    private static @Nullable Browser browser;

    @BeforeAll
    static void open() {
        System.setProperty("loopwright.home", "..");
        StoreOptions.Where where = new StoreOptions.Where(folder, Optional.empty());
        try (BenchStore store = StoreVerbs.open(where)) {
            StoreVerbs.accounts(store.access()).addCoach("Owner", PASSWORD);
        }
        Bench started = Bench.on(where, true, new Doors(HOST, Optional.empty()));
        bench = started;
        browser = Browser.open("http://" + HOST + ":" + started.start(0));
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
        if (bench != null) {
            bench.close();
        }
    }

    private static Browser browser() {
        return Objects.requireNonNull(browser);
    }

    private static void logIn(String name, String password) {
        browser().await("input[name=name]").clear();
        browser().get("input[name=name]").sendKeys(name);
        browser().get("input[name=password]").sendKeys(password);
        browser().get("main form button").click();
    }

    private static void look(String name) {
        browser().assertAccessible();
        browser().screenshots(name);
    }

    @Test
    void theOwnerLogsInAndInvitesAPlayerWhoSeesOnlyHisOwn() {
        Browser b = browser();
        b.go("/plan?target=79");
        assertThat(b.address()).startsWith("/login?to=");
        look("login");
        logIn("Owner", "not the password");
        assertThat(b.await("p.beware").getText()).contains("Name or password is wrong");
        b.forgetRequests(); // the refusal is a message of the browser, and meant
        logIn("Owner", PASSWORD);
        b.await("header nav a");
        assertThat(b.text("header nav")).contains("People", "Owner");
        b.go("/account");
        look("account");
        b.go("/people");
        look("people");
        b.run("document.querySelector(\"form[action='/people/invite'] select[name=role]\").value = 'PLAYER';"
                + "const p = document.querySelector(\"form[action='/people/invite'] select[name=player]\");"
                + "p.value = [...p.options].find(o => o.value !== '').value;");
        b.get("form[action='/people/invite'] button").click();
        String link = String.valueOf(b.await("#invitation").getAttribute("href"));
        look("people-invited");
        b.go("/account").get("form[action='/logout'] button").click();
        b.await("input[name=password]");
        b.go(link.substring(link.indexOf("/join")));
        look("join");
        logIn("Ann", "another four words");
        b.await("header nav a");
        assertThat(b.text("header nav"))
                .contains("Ann", "Rounds")
                .doesNotContain("People")
                .doesNotContain("Today");
        b.go("/rounds");
        assertThat(b.text("h1")).isEqualTo("invented player");
        b.assertAccessible();
        b.assertNoForeignRequest();
    }
}
