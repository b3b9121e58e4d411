package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.action.Account;
import loopwright.action.Account.Role;
import loopwright.action.Accounts;
import loopwright.action.BenchStore;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import loopwright.cli.StoreOptions;
import loopwright.web.Doors;
import loopwright.web.Right;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bench that others reach: who may ask for what, and for whose data. */
class AccessIT {
    /** A loopback address that is not this computer's own name, so that everybody has to log in. */
    private static final String HOST = "127.0.0.2";

    private static final String PASSWORD = "four plain words here";
    private static final int UNAUTHORIZED = 401;
    private static final int FORBIDDEN = 403;

    /** Routes that are about one player: with another's id they find nobody. */
    private static final Set<String> ABOUT_A_PLAYER = Set.of(
            "GET /plan",
            "GET /plan/hole",
            "GET /plan/hole/part",
            "GET /plan/tees",
            "GET /plan/state",
            "GET /plan/expect",
            "GET /plan/safety",
            "GET /plan/wedges",
            "GET /plan/short",
            "GET /plan/hole/spot",
            "GET /plan/hole/aim",
            "GET /plan/hole/location",
            "GET /player",
            "GET /player/patterns.svg",
            "GET /green",
            "GET /green/answer",
            "GET /data/export",
            "POST /plan/forecast",
            "GET /rounds",
            "GET /rounds/review",
            "GET /rounds/new",
            "GET /rounds/sheet",
            "GET /rounds/options",
            "POST /rounds/erase",
            "POST /rounds/lesson",
            "POST /rounds/lesson/done",
            "POST /rounds/file",
            "POST /player/answers",
            "POST /player/list/erase",
            "POST /people/invite",
            "POST /people/share",
            "POST /data/erase");

    @TempDir
    private static Path folder;

    private static @Nullable Bench bench;
    private static String origin = "";
    private static Shelf.@Nullable Document mine;
    private static Shelf.@Nullable Document others;
    private static final Map<String, String> COOKIES = new LinkedHashMap<>();

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @BeforeAll
    static void open() throws Exception {
        System.setProperty("loopwright.home", "..");
        StoreOptions.Where where = new StoreOptions.Where(folder, Optional.empty());
        assertThatThrownBy(() -> Bench.on(where, false, new Doors(HOST, Optional.empty())))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("coach add");
        try (BenchStore store = StoreVerbs.open(where)) {
            Accounts accounts = StoreVerbs.accounts(store.access());
            accounts.addCoach("Owner", PASSWORD);
            Account coach = accounts.addCoach("Coach", PASSWORD);
            Account other = accounts.addCoach("Other", PASSWORD);
            String player = Files.readString(Path.of("../demo/player.json"));
            mine = store.players().add("Mine", player, "");
            others = store.players().add("Not mine", player.replace("\"name\"", "\"name\" "), "");
            store.access().grant(coach.id(), mine.id());
            store.access().grant(other.id(), others.id());
            accounts.join(accounts.invite(Role.PLAYER, mine.id()), "Player", PASSWORD);
            accounts.join(accounts.invite(Role.GUARDIAN, mine.id()), "Guardian", PASSWORD);
        }
        Bench started = Bench.on(where, true, new Doors(HOST, Optional.empty()));
        bench = started;
        origin = "http://" + HOST + ":" + started.start(0);
        for (String name : List.of("Owner", "Coach", "Player", "Guardian")) {
            COOKIES.put(name, logIn(name));
        }
    }

    @AfterAll
    static void close() {
        if (bench != null) {
            bench.close();
        }
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static HttpRequest.Builder request(String address, @Nullable String cookie) {
        HttpRequest.Builder out = HttpRequest.newBuilder(URI.create(origin + address));
        return cookie == null ? out : out.header("Cookie", cookie);
    }

    private static HttpResponse<String> post(String address, @Nullable String cookie, String form) throws Exception {
        return send(request(address, cookie)
                .header("Origin", origin)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form)));
    }

    private static String logIn(String name) throws Exception {
        HttpResponse<String> answer = post("/login", null, form("name", name, "password", PASSWORD));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        return cookie(answer);
    }

    private static String cookie(HttpResponse<String> answer) {
        return answer.headers().allValues("Set-Cookie").stream()
                .map(c -> c.split(";", 2)[0])
                .filter(c -> !c.endsWith("="))
                .reduce((first, last) -> last)
                .orElseThrow();
    }

    private static String form(String... pairs) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            out.add(pairs[i] + "=" + URLEncoder.encode(pairs[i + 1], StandardCharsets.UTF_8));
        }
        return String.join("&", out);
    }

    /** The route with everything it may want; destructive ones lack the word that they are meant. */
    private static HttpResponse<String> ask(String route, @Nullable String cookie, Shelf.Document player)
            throws Exception {
        String path = route.substring(route.indexOf(' ') + 1);
        String form = form(
                        "player",
                        player.id(),
                        "hole",
                        "99",
                        "version",
                        "1",
                        "seen",
                        "1",
                        "list",
                        "x",
                        "what",
                        "player:" + player.id())
                + "&role=PLAYER&x=1&y=1&ax=1&ay=1&club=x&key="
                + form("", "round " + player.id() + ".1 x").substring(1);
        if (route.startsWith("GET")) {
            return send(request(path + "?" + form, cookie));
        }
        return post(path, cookie, path.equals("/data/erase") ? form + "&sure=yes" : form);
    }

    @Test
    void everyRouteIsInTheTableOfRights() throws IOException {
        Pattern pattern = Pattern.compile("routes\\.(get|post|sse)\\(\\s*\"([^\"]+)\"");
        Set<String> found = new TreeSet<>();
        try (var files = Files.list(Path.of("src/main/java/loopwright/web"))) {
            for (Path file : files.toList()) {
                Matcher m = pattern.matcher(Files.readString(file));
                while (m.find()) {
                    found.add((m.group(1).equals("post") ? "POST " : "GET ") + m.group(2));
                }
            }
        }
        assertThat(found).isEqualTo(Right.TABLE.keySet());
    }

    @Test
    void everyRoleReachesWhatItMayAndNobodyReachesAnothersPlayer() throws Exception {
        Map<String, Role> roles = new LinkedHashMap<>();
        roles.put("Coach", Role.COACH);
        roles.put("Player", Role.PLAYER);
        roles.put("Guardian", Role.GUARDIAN);
        List<String> wrong = new ArrayList<>();
        for (Map.Entry<String, Right> entry : Right.TABLE.entrySet()) {
            String route = entry.getKey();
            if (route.equals("POST /logout") || route.equals("POST /login") || route.equals("POST /join")) {
                continue;
            }
            int nobody = ask(route, null, Objects.requireNonNull(others)).statusCode();
            if (entry.getValue() != Right.PUBLIC && nobody != UNAUTHORIZED && nobody != FORBIDDEN) {
                wrong.add("nobody " + route + " " + nobody);
            }
            for (Map.Entry<String, Role> who : roles.entrySet()) {
                String cookie = COOKIES.get(who.getKey());
                boolean may = entry.getValue().allows(who.getValue());
                HttpResponse<String> foreign = ask(route, cookie, Objects.requireNonNull(others));
                if (may
                        ? ABOUT_A_PLAYER.contains(route) && foreign.statusCode() < 400
                        : foreign.statusCode() != FORBIDDEN) {
                    wrong.add(who.getKey() + " " + route + " another's: " + foreign.statusCode());
                }
                if (foreign.body().contains("Not mine")) {
                    wrong.add(who.getKey() + " " + route + " shows another's");
                }
                if (!route.equals("POST /data/erase")) {
                    int own = ask(route, cookie, Objects.requireNonNull(mine)).statusCode();
                    if (may == (own == FORBIDDEN || own == UNAUTHORIZED)) {
                        wrong.add(who.getKey() + " " + route + " own: " + own);
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
        String owner = COOKIES.get("Owner");
        assertThat(send(request("/data", owner)).body()).as("nobody changed it").contains("Not mine");
        assertThat(send(request("/data", COOKIES.get("Coach"))).body()).doesNotContain("Not mine");
        HttpResponse<String> log = send(request("/people", owner));
        assertThat(log.body()).contains("/people/invite").contains("Coach");
    }

    @Test
    void aFormOfAnotherSiteIsRefused() throws Exception {
        String cookie = COOKIES.get("Owner");
        HttpRequest.Builder bare = request("/data/units", cookie)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("units=metres"));
        assertThat(send(bare).statusCode()).isEqualTo(FORBIDDEN);
        assertThat(send(bare.header("Origin", "http://elsewhere.example")).statusCode())
                .isEqualTo(FORBIDDEN);
        assertThat(post("/data/units", cookie, "units=metres").statusCode()).isEqualTo(303);
        assertThat(send(request("/account", COOKIES.get("Coach"))).body())
                .as("preferences are one's own")
                .contains("value=\"yards\" selected");
    }

    @Test
    void aSessionThatSomebodyPlantedIsWorthNothing() throws Exception {
        HttpResponse<String> answer = send(request("/login", "bench=planted")
                .header("Origin", origin)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form("name", "coach", "password", PASSWORD))));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(cookie(answer)).isNotEqualTo("bench=planted");
        assertThat(answer.headers().allValues("Set-Cookie"))
                .allMatch(c -> c.contains("HttpOnly") && c.contains("SameSite=Lax"));
        assertThat(send(request("/plan", "bench=planted")).statusCode()).isEqualTo(UNAUTHORIZED);
        String fresh = cookie(answer);
        assertThat(post("/logout", fresh, "").statusCode()).isEqualTo(303);
        assertThat(send(request("/plan", fresh)).statusCode()).isEqualTo(UNAUTHORIZED);
    }

    @Test
    void whoGuessesPasswordsHasToWait() throws Exception {
        for (int i = 0; i < 5; i++) {
            assertThat(post("/login", null, form("name", "Other", "password", "wrong " + i))
                            .statusCode())
                    .isEqualTo(UNAUTHORIZED);
        }
        HttpResponse<String> answer = post("/login", null, form("name", "other", "password", PASSWORD));
        assertThat(answer.statusCode()).isEqualTo(429);
        assertThat(answer.body()).contains("15 minutes");
    }

    @Test
    void aPageWithoutASessionLeadsToTheLogInAndBack() throws Exception {
        HttpResponse<String> answer = send(request("/plan?target=79", null).header("Accept", "text/html"));
        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(answer.headers().firstValue("Location")).contains("/login?to=%2Fplan%3Ftarget%3D79");
        assertThat(send(request("/login?to=//elsewhere.example", null)).body()).doesNotContain("elsewhere");
    }

    @Test
    void behindAProxyTheCookieIsSecureAndOtherNamesAreRefused() throws Exception {
        StoreOptions.Where where = new StoreOptions.Where(folder.resolve("proxied"), Optional.empty());
        try (BenchStore store = StoreVerbs.open(where)) {
            StoreVerbs.accounts(store.access()).addCoach("Owner", PASSWORD);
        }
        Doors doors = new Doors("127.0.0.1", Optional.of(URI.create("https://bench.example")));
        try (Bench proxied = Bench.on(where, false, doors)) {
            int port = proxied.start(0);
            String form = form("name", "Owner", "password", PASSWORD);
            String answer = raw(port, "bench.example", form);
            assertThat(answer)
                    .startsWith("HTTP/1.1 303")
                    .contains("__Host-bench=")
                    .contains("Secure")
                    .contains("Strict-Transport-Security");
            assertThat(raw(port, "127.0.0.1:" + port, form)).startsWith("HTTP/1.1 403");
        }
    }

    /** A log-in as a proxy would pass it on. */
    private static String raw(int port, String host, String form) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.getOutputStream()
                    .write(("POST /login HTTP/1.1\r\nHost: " + host + "\r\nOrigin: https://bench.example\r\n"
                                    + "Content-Type: application/x-www-form-urlencoded\r\nConnection: close\r\n"
                                    + "Content-Length: " + form.length() + "\r\n\r\n" + form)
                            .getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
