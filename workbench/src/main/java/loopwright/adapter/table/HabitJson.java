package loopwright.adapter.table;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.EnumMap;
import java.util.Map;
import loopwright.player.ClubTable;
import loopwright.player.Habit;

/** The part of the player's JSON that says how he plays without a plan; every field may be left out. */
final class HabitJson {
    private HabitJson() {}

    static ObjectNode write(Habit habit) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        ObjectNode clubs = out.putObject("teeClubs");
        for (Habit.HoleKind kind : Habit.HoleKind.values()) {
            String club = habit.teeClubs().get(kind);
            if (club != null) {
                clubs.put(JsonField.written(kind), club);
            }
        }
        out.put("aim", JsonField.written(habit.aim()));
        out.put("chip", JsonField.written(habit.chip()));
        out.put("layUpMetres", habit.layUpMetres());
        return out;
    }

    static Habit read(JsonField f) {
        Habit usual = Habit.USUAL;
        return new Habit(
                f.find("teeClubs").map(HabitJson::readClubs).orElse(usual.teeClubs()),
                f.find("aim").map(a -> f.choice("aim", Habit.Aim.class)).orElse(usual.aim()),
                f.find("chip")
                        .map(c -> f.choice("chip", Habit.ChipChoice.class))
                        .orElse(usual.chip()),
                f.find("layUpMetres").map(JsonField::number).orElse(usual.layUpMetres()));
    }

    private static Map<Habit.HoleKind, String> readClubs(JsonField f) {
        Map<Habit.HoleKind, String> out = new EnumMap<>(Habit.HoleKind.class);
        for (Habit.HoleKind kind : Habit.HoleKind.values()) {
            String name = JsonField.written(kind);
            f.find(name).ifPresent(club -> out.put(kind, club(f, name)));
        }
        return out;
    }

    private static String club(JsonField f, String name) {
        String typed = f.text(name);
        return ClubTable.find(typed)
                .orElseThrow(() -> f.get(name)
                        .fault("is \"" + typed + "\", which is no club; driver, 3-wood, 4-hybrid or"
                                + " 7-iron are accepted"))
                .name();
    }
}
