package loopwright.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loopwright.action.DrillLog;
import loopwright.action.PracticePictures.DrillCard;
import loopwright.action.Shelf;
import loopwright.action.UserFault;

/**
 * Drills to be logged: what {@code drill.js} needs to know, on a page of the bench or in a file of its own, and the small file
 * that it gives back. Every playing is named by a number drawn on the phone: sent twice, it is taken once.
 */
record DrillSheet(Shelf.Entry player, List<DrillCard> cards) {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int MOST_PLAYINGS = 1000;
    private static final List<String> WORDS = List.of(
            "drill",
            "score",
            "minutes",
            "note",
            "less",
            "more",
            "date",
            "keep",
            "kept",
            "none",
            "remove",
            "give",
            "giveMeans",
            "text",
            "again",
            "sure",
            "expect",
            "of");

    /** What was written on a sheet. */
    record Written(String player, List<DrillLog.Playing> playings) {}

    /** The sheet as a file of its own. */
    String file() {
        return RoundSheet.file(
                Texts.say("drillsheet.title", player.name()),
                Texts.say("drillsheet.caution"),
                JsonText.of(data("sheet-" + player.id())),
                texts(),
                "drill");
    }

    /** What the page of the bench carries: the same, with the address that keeps it, and the drill to begin with. */
    String page(String drill) {
        Map<String, Object> data = data("bench-" + player.id());
        data.put("first", drill);
        data.put("post", "/practice/log");
        return JsonText.of(data);
    }

    static String texts() {
        Map<String, String> out = new LinkedHashMap<>();
        WORDS.forEach(w -> out.put(w, Texts.say("drillsheet." + w)));
        return JsonText.of(out);
    }

    private Map<String, Object> data(String id) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("id", id);
        out.put("player", player.id());
        out.put("drills", cards.stream().map(DrillSheet::drill).toList());
        return out;
    }

    private static Map<String, Object> drill(DrillCard card) {
        return Map.of(
                "name", card.drill().name(),
                "minutes", card.drill().minutes(),
                "most", card.drill().most(),
                "setUp", card.drill().setUp(),
                "scoring", card.drill().scoring(),
                "expect", DrillPages.said(card.own()));
    }

    /** Reads what a sheet gave back. */
    static Written read(String label, String text) {
        try {
            JsonNode all = JSON.readTree(text);
            String player = all.path("player").asText();
            if (!player.matches("[a-z0-9-]{1,40}")
                    || !all.path("drills").isArray()
                    || all.path("drills").size() > MOST_PLAYINGS) {
                throw new UserFault(Texts.say("drillsheet.unreadable", label));
            }
            List<DrillLog.Playing> out = new ArrayList<>();
            for (JsonNode d : all.path("drills")) {
                out.add(playing(label, d));
            }
            return new Written(player, out);
        } catch (JsonProcessingException e) {
            throw new UserFault(Texts.say("drillsheet.unreadable", label), e);
        }
    }

    private static DrillLog.Playing playing(String label, JsonNode d) {
        String recording = d.path("recording").asText();
        if (!recording.matches("[a-z0-9]{6,24}")
                || !d.path("score").isInt()
                || !d.path("minutes").isInt()) {
            throw new UserFault(Texts.say("drillsheet.unreadable", label));
        }
        try {
            return new DrillLog.Playing(
                    recording,
                    LocalDate.parse(d.path("day").asText()),
                    d.path("drill").asText(),
                    d.path("score").asInt(),
                    d.path("minutes").asInt(),
                    d.path("note")
                            .asText()
                            .replaceAll("[\\p{Cntrl}\\[\\]]", " ")
                            .strip());
        } catch (DateTimeParseException e) {
            throw new UserFault(Texts.say("lesson.noDay", d.path("day").asText()), e);
        }
    }
}
