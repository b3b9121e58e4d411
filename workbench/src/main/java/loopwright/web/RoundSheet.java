package loopwright.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import loopwright.action.Shelf;
import loopwright.action.Tokens;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeeSet;

/**
 * A round to be written down: what {@code entry.js} needs to know, on a page of the bench or in a file of its own. The
 * file needs no server and no network; it shows the card and what was typed, and no advice. What it gives back is a table
 * in the form of {@code docs/rounds.md}, the round named by a number drawn when the recording began: one sheet sent twice
 * is one round, two sheets of a round are two records of it.
 */
record RoundSheet(Shelf.Entry player, Course course, TeeSet tees, Tier tier, boolean lesson, Units units) {
    private static final int ID_LETTERS = 12;
    private static final List<String> WORDS = List.of(
            "score",
            "scoreShort",
            "picked_up",
            "tee_ball",
            "approach",
            "penalties",
            "chips",
            "first_putt_paces",
            "putts",
            "yes",
            "in play",
            "left",
            "right",
            "lost",
            "green",
            "short",
            "long",
            "less",
            "more",
            "clear",
            "before",
            "after",
            "whole",
            "hole",
            "par",
            "back",
            "date",
            "open",
            "strokes",
            "give",
            "giveMeans",
            "text",
            "again",
            "sure",
            "keepRound",
            "lie",
            "distance",
            "feet",
            "club",
            "penalty",
            "remove",
            "addStroke",
            "strokesOf",
            "strokesMean",
            "lie_tee",
            "lie_fairway",
            "lie_rough",
            "lie_sand",
            "lie_recovery",
            "lie_green",
            "aim",
            "aimAgain",
            "meant_lie",
            "options",
            "working",
            "as_meant",
            "as_yes",
            "as_no");

    /** How much is written down: scores, counts, strokes, places. */
    enum Tier {
        A,
        B,
        C,
        D
    }

    /** The sheet as a file of its own. */
    String file() {
        String title = Texts.say("sheet.title", course.name(), tees.name(), player.name());
        String data = JsonText.of(data(Tokens.fresh().substring(0, ID_LETTERS)));
        return file(title, Texts.say("sheet.caution"), data, texts(), "entry");
    }

    /** A sheet of any kind as a file of its own, worked by a script of {@code static} and {@code sheet.js}. */
    static String file(String title, String caution, String data, String texts, String script) {
        return resource("sheet.html")
                .replace("{{title}}", HoleSvg.escaped(title))
                .replace("{{notKept}}", HoleSvg.escaped(Texts.say("sheet.notKept")))
                .replace("{{noScript}}", HoleSvg.escaped(Texts.say("sheet.noScript")))
                .replace("{{caution}}", HoleSvg.escaped(caution))
                .replace("{{data}}", HoleSvg.escaped(data))
                .replace("{{texts}}", HoleSvg.escaped(texts))
                .replace("{{css}}", resource("static/entry.css"))
                .replace("{{script}}", resource("static/sheet.js") + resource("static/" + script + ".js"));
    }

    /** What the page of the bench carries: the same, with the addresses of chart, places and keeping. */
    String page(String course) {
        String about = "?course=" + course + "&tees=" + java.net.URLEncoder.encode(tees.name(), StandardCharsets.UTF_8);
        Map<String, Object> data = data(
                "bench-" + player.id() + "-" + course + "-" + tees.name() + "-" + tier + (lesson ? "-lesson" : ""));
        data.put("chart", "/rounds/chart" + about);
        data.put("places", "/rounds/place" + about);
        if (lesson && tier == Tier.D) {
            data.put("options", "/rounds/options" + about + "&player=" + player.id());
        }
        data.put("post", "/rounds/import");
        data.put("done", "/rounds?player=" + player.id());
        return JsonText.of(data);
    }

    static String texts() {
        Map<String, String> out = new LinkedHashMap<>();
        WORDS.forEach(w -> out.put(w, Texts.say("sheet." + w.replace(' ', '_'))));
        return JsonText.of(out);
    }

    private Map<String, Object> data(String id) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("id", id);
        out.put("player", player.id());
        out.put("course", course.name());
        out.put("tees", tees.name());
        out.put("tier", tier.name().toLowerCase(java.util.Locale.ROOT));
        out.put("lesson", lesson);
        out.put("unit", units.unit());
        out.put("lengthColumn", "length_" + units.unit());
        out.put("toHoleColumn", "to_hole_" + units.unit());
        out.put("holes", course.holes().stream().map(this::hole).toList());
        return out;
    }

    private Map<String, Object> hole(Hole hole) {
        double metres = course.lengthMetres(hole, tees);
        return Map.of(
                "number", hole.number(),
                "par", hole.par(),
                "length", units.length(metres),
                "lengthNumber", Math.round(units.number(metres)));
    }

    static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(RoundSheet.class.getResourceAsStream(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
