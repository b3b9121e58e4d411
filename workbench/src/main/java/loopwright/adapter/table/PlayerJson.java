package loopwright.adapter.table;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import loopwright.player.Club;
import loopwright.player.DayEffect;
import loopwright.player.Evidence;
import loopwright.player.Habit;
import loopwright.player.Mishit;
import loopwright.player.Player;
import loopwright.player.PlayerProfile;
import loopwright.player.ShotPattern;
import loopwright.player.Swing;
import loopwright.player.TouchShot;
import loopwright.putting.PuttingSkill;

/**
 * The player as JSON, as {@code docs/player.schema.json} describes it: lengths in metres, angles in degrees, each name
 * with its unit.
 */
final class PlayerJson {
    static final int VERSION = 1;

    private PlayerJson() {}

    // ---- writing ----

    static ObjectNode write(PlayerProfile profile) {
        Player player = profile.player();
        ObjectNode out = object();
        out.put("loopwrightPlayer", VERSION);
        out.put("name", player.name());
        out.put("hand", JsonField.written(player.hand()));
        out.put("level", player.level());
        out.put("lostBallsPerRound", player.lostBallsPerRound());
        ArrayNode swings = out.putArray("swings");
        player.swings().forEach(s -> swings.add(swing(s)));
        ArrayNode touch = out.putArray("touchShots");
        player.touchShots().forEach(t -> touch.add(touchShot(t)));
        out.set("putting", putting(player.putting()));
        out.set("day", day(profile.day()));
        out.set("habit", HabitJson.write(profile.habit()));
        return out;
    }

    private static ObjectNode swing(Swing s) {
        ObjectNode out = object();
        out.put("club", s.club().name());
        out.put("family", JsonField.written(s.club().family()));
        out.put("effort", s.effort());
        out.set("pattern", pattern(s.pattern()));
        out.set("evidence", evidence(s.evidence()));
        return out;
    }

    private static ObjectNode pattern(ShotPattern p) {
        ObjectNode out = object();
        out.put("carryMetres", p.carryMetres());
        out.put("carrySdMetres", p.carrySdMetres());
        out.put("directionDegrees", Math.toDegrees(p.directionRadians()));
        out.put("directionSdDegrees", Math.toDegrees(p.directionSdRadians()));
        out.put("correlation", p.correlation());
        out.put("runMetres", p.runMetres());
        out.put("apexMetres", p.apexMetres());
        out.put("descentDegrees", Math.toDegrees(p.descentRadians()));
        out.set("mishits", mishits(p.mishits()));
        return out;
    }

    private static ArrayNode mishits(List<Mishit> mishits) {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        for (Mishit m : mishits) {
            ObjectNode node = out.addObject();
            node.put("kind", JsonField.written(m.kind()));
            node.put("rate", m.rate());
            node.put("carryFactor", m.carryFactor());
            node.put("carryFactorSd", m.carryFactorSd());
            node.put("directionDegrees", Math.toDegrees(m.directionRadians()));
            node.put("directionSdDegrees", Math.toDegrees(m.directionSdRadians()));
            node.put("low", m.low());
        }
        return out;
    }

    private static ObjectNode evidence(Evidence e) {
        return object().put("balls", e.balls()).put("assumedShare", e.assumedShare());
    }

    private static ObjectNode touchShot(TouchShot t) {
        ObjectNode out = object();
        out.put("kind", JsonField.written(t.kind()));
        out.put("minMetres", t.minMetres());
        out.put("maxMetres", t.maxMetres());
        out.put("distanceSdFloorMetres", t.distanceSdFloorMetres());
        out.put("distanceSdShare", t.distanceSdShare());
        out.put("directionSdDegrees", Math.toDegrees(t.directionSdRadians()));
        out.put("runShare", t.runShare());
        out.set("mishits", mishits(t.mishits()));
        out.set("evidence", evidence(t.evidence()));
        out.putArray("spreadRange")
                .add(rounded(t.spreadRange().low()))
                .add(rounded(t.spreadRange().high()));
        return out;
    }

    private static double rounded(double factor) {
        return Math.rint(factor * 1000) / 1000;
    }

    private static ObjectNode putting(PuttingSkill p) {
        return object().put("startLineSdDegrees", Math.toDegrees(p.startLineSdRadians()))
                .put("paceSd", p.paceSd())
                .put("readingSd", p.readingSd())
                .put("putts", p.evidence());
    }

    private static ObjectNode day(DayEffect d) {
        return object().put("directionSdDegrees", Math.toDegrees(d.directionSdRadians()))
                .put("logSpreadSd", d.logSpreadSd());
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    // ---- reading ----

    static PlayerProfile read(JsonField root) {
        int version = root.whole("loopwrightPlayer");
        if (version != VERSION) {
            throw root.get("loopwrightPlayer").fault("is " + version + "; this program reads version " + VERSION);
        }
        Player player = root.build(PlayerJson::readPlayer);
        DayEffect day = root.find("day").map(d -> d.build(PlayerJson::readDay)).orElse(DayEffect.ASSUMED);
        Habit habit = root.find("habit").map(h -> h.build(HabitJson::read)).orElse(Habit.USUAL);
        return new PlayerProfile(player, day, habit);
    }

    private static Player readPlayer(JsonField f) {
        return new Player(
                f.text("name"),
                f.choice("hand", Player.Hand.class),
                f.number("level"),
                f.get("swings").list().stream()
                        .map(s -> s.build(PlayerJson::readSwing))
                        .toList(),
                f.get("touchShots").list().stream()
                        .map(t -> t.build(PlayerJson::readTouchShot))
                        .toList(),
                f.get("putting").build(PlayerJson::readPutting),
                f.number("lostBallsPerRound"));
    }

    private static Swing readSwing(JsonField f) {
        Club club = new Club(f.text("club"), f.choice("family", Club.Family.class));
        return new Swing(
                club,
                f.text("effort"),
                f.get("pattern").build(PlayerJson::readPattern),
                f.get("evidence").build(PlayerJson::readEvidence));
    }

    private static ShotPattern readPattern(JsonField f) {
        return new ShotPattern(
                f.number("carryMetres"),
                f.number("carrySdMetres"),
                radians(f, "directionDegrees"),
                radians(f, "directionSdDegrees"),
                f.number("correlation"),
                f.number("runMetres"),
                f.number("apexMetres"),
                radians(f, "descentDegrees"),
                readMishits(f));
    }

    private static List<Mishit> readMishits(JsonField f) {
        return f.get("mishits").list().stream()
                .map(m -> m.build(PlayerJson::readMishit))
                .toList();
    }

    private static Mishit readMishit(JsonField f) {
        return new Mishit(
                f.choice("kind", Mishit.Kind.class),
                f.number("rate"),
                f.number("carryFactor"),
                f.number("carryFactorSd"),
                radians(f, "directionDegrees"),
                radians(f, "directionSdDegrees"),
                f.flag("low"));
    }

    private static Evidence readEvidence(JsonField f) {
        return new Evidence(f.whole("balls"), f.number("assumedShare"));
    }

    private static TouchShot readTouchShot(JsonField f) {
        return new TouchShot(
                f.choice("kind", TouchShot.Kind.class),
                f.number("minMetres"),
                f.number("maxMetres"),
                f.number("distanceSdFloorMetres"),
                f.number("distanceSdShare"),
                radians(f, "directionSdDegrees"),
                f.number("runShare"),
                readMishits(f),
                f.get("evidence").build(PlayerJson::readEvidence));
    }

    private static PuttingSkill readPutting(JsonField f) {
        return new PuttingSkill(
                radians(f, "startLineSdDegrees"), f.number("paceSd"), f.number("readingSd"), f.whole("putts"));
    }

    private static DayEffect readDay(JsonField f) {
        return new DayEffect(radians(f, "directionSdDegrees"), f.number("logSpreadSd"));
    }

    private static double radians(JsonField f, String name) {
        return Math.toRadians(f.number(name));
    }
}
