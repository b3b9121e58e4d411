package loopwright.web;

import java.util.Map;
import java.util.TreeMap;
import loopwright.action.Account;

/**
 * Who may ask for what, by method and path; whose data it may be is the matter of {@code GuardedStore}. What the table
 * does not name is refused.
 */
public enum Right {
    /** Also without logging in. */
    PUBLIC,
    /** Whoever has logged in, for what he may see. */
    ANYONE,
    COACH,
    OWNER;

    /** Every route of the bench. */
    public static final Map<String, Right> TABLE = table();

    private static Map<String, Right> table() {
        Map<String, Right> out = new TreeMap<>();
        put(out, PUBLIC, "GET /login", "POST /login", "GET /join", "POST /join");
        put(out, ANYONE, "GET /", "GET /account", "POST /account/password", "POST /logout", "POST /data/units");
        put(out, ANYONE, "GET /plan", "GET /plan/hole", "GET /plan/hole/part", "GET /plan/hole/spot");
        put(out, ANYONE, "GET /plan/hole/aim", "GET /plan/hole/location", "GET /jobs/events", "POST /jobs/cancel");
        put(out, ANYONE, "GET /plan/hole/aims", "GET /plan/hole/pair", "GET /plan/hole/chance");
        put(out, ANYONE, "GET /plan/hole/ground", "GET /plan/hole/contours");
        put(out, ANYONE, "GET /plan/tees", "GET /plan/state", "GET /plan/expect", "GET /plan/safety");
        put(out, ANYONE, "GET /plan/wedges", "GET /plan/short");
        put(out, ANYONE, "GET /course", "GET /course/picture.svg", "GET /course/areas", "GET /course/image.png");
        put(out, ANYONE, "GET /player", "GET /player/patterns.svg", "GET /green", "GET /green/answer");
        put(out, ANYONE, "GET /rounds", "GET /rounds/review", "GET /rounds/new", "GET /rounds/sheet");
        put(out, ANYONE, "GET /rounds/chart", "GET /rounds/place", "GET /rounds/options", "POST /rounds/import");
        put(out, ANYONE, "GET /practice", "GET /practice/week", "GET /practice/week.pdf", "GET /practice/calendar.ics");
        put(out, ANYONE, "GET /practice/drills", "GET /practice/drill.svg", "GET /practice/log", "POST /practice/log");
        put(out, ANYONE, "POST /practice/next");
        put(out, COACH, "POST /practice/drills", "POST /practice/drills/erase");
        put(out, ANYONE, "GET /practice/sheet", "GET /practice/review");
        put(out, COACH, "GET /print", "GET /print/page.svg", "GET /print/file");
        put(out, COACH, "GET /today", "POST /rounds/erase", "POST /rounds/lesson", "POST /rounds/lesson/done");
        put(out, COACH, "POST /rounds/file", "POST /plan/forecast");
        put(out, ANYONE, "GET /data/ledger", "GET /data/export");
        put(
                out,
                COACH,
                "POST /course/new",
                "POST /course/areas",
                "POST /course/strip",
                "POST /course/survey",
                "POST /course/settle",
                "POST /course/note",
                "POST /course/heights",
                "POST /course/image",
                "POST /course/image/show",
                "POST /course/image/erase");
        put(out, COACH, "POST /course/version", "GET /player/new", "POST /player/new", "POST /player/answers");
        put(out, COACH, "POST /player/list", "POST /player/list/erase", "GET /data", "POST /data/import");
        put(out, COACH, "POST /data/erase", "GET /people", "POST /people/invite", "POST /people/share");
        put(out, OWNER, "POST /data/restore", "POST /people/remove");
        return java.util.Collections.unmodifiableMap(out);
    }

    private static void put(Map<String, Right> table, Right right, String... routes) {
        for (String route : routes) {
            table.put(route, right);
        }
    }

    /** The right of a route that the table names. */
    static Right of(String route) {
        Right right = TABLE.get(route);
        if (right == null) {
            throw new IllegalArgumentException("there is no right for " + route);
        }
        return right;
    }

    public boolean allows(Account.Role role) {
        return switch (this) {
            case PUBLIC, ANYONE -> true;
            case COACH -> role.isCoach();
            case OWNER -> role == Account.Role.OWNER;
        };
    }
}
