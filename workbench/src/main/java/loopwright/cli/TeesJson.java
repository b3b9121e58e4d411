package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import loopwright.action.ApproachClubs;
import loopwright.action.PublishedLength;
import loopwright.action.TeesAnswer;
import loopwright.units.Distance;

/** Sets of tees side by side as the JSON of {@code docs/schema/tees.schema.json}. */
final class TeesJson {
    private TeesJson() {}

    static Map<String, Object> of(TeesAnswer a) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("course", a.course());
        out.put("holes", a.holes());
        out.put("player", a.player());
        out.put("target", a.target());
        out.put("published", published(a.published()));
        out.put("sets", a.sets().stream().map(TeesJson::row).toList());
        out.put("recommended", choice(a.choice()));
        out.put("today", TodayJson.of(a.today()));
        a.partner().ifPresent(p -> out.put("partner", partner(p)));
        return out;
    }

    private static Map<String, Object> partner(TeesAnswer.Partner p) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("player", p.player());
        out.put("published", published(p.published()));
        out.put("sets", p.sets().stream().map(TeesJson::row).toList());
        out.put("recommended", choice(p.choice()));
        out.put("pairOwn", p.pairOwn());
        out.put("pairOther", p.pairOther());
        out.put("difference", p.difference());
        return out;
    }

    private static Map<String, Object> published(PublishedLength p) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("driveYards", yards(p.driveMetres()));
        out.put("shortestYards", yards(p.shortestMetres()));
        out.put("longestYards", yards(p.longestMetres()));
        return out;
    }

    private static Map<String, Object> choice(TeesAnswer.Choice c) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("set", c.set());
        out.put("reason", c.reason());
        return out;
    }

    private static Map<String, Object> row(TeesAnswer.Row r) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("name", r.name());
        out.put("variant", r.variant());
        out.put("mixed", r.mixed());
        out.put("lengthYards", yards(r.lengthMetres()));
        r.play().ifPresent(p -> put(out, p));
        return out;
    }

    private static void put(Map<String, Object> out, TeesAnswer.Play p) {
        out.put("expected", p.expected());
        out.put("pTarget", p.chance());
        ApproachClubs c = p.approaches();
        Map<String, Object> clubs = new LinkedHashMap<>();
        clubs.put("long", c.longClub());
        clubs.put("middle", c.middleIron());
        clubs.put("short", c.shortIron());
        clubs.put("wedge", c.wedge());
        clubs.put("outOfReach", c.outOfReach());
        out.put("approaches", clubs);
        out.put("parFours", p.parFours());
        out.put("parFoursInTwo", p.parFoursInTwo());
        out.put("parFives", p.parFives());
        out.put("parFivesInTwo", p.parFivesInTwo());
        out.put("parFivesInThree", p.parFivesInThree());
        out.put("ballsLost", p.ballsLost());
        out.put(
                "carriesBeyond",
                p.carriesBeyond().stream()
                        .map(f -> Map.of(
                                "hole", f.hole(), "yards", yards(f.metres()), "longestYards", yards(f.longestMetres())))
                        .toList());
    }

    private static double yards(double metres) {
        return Distance.ofMetres(metres).yards();
    }
}
