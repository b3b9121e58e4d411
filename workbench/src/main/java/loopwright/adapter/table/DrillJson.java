package loopwright.adapter.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loopwright.action.DrillFiles;
import loopwright.practice.Drill;
import loopwright.practice.DrillShot;
import loopwright.practice.Facility;
import loopwright.practice.PuttStation;
import loopwright.practice.ShotStation;
import loopwright.practice.Station;
import loopwright.practice.UpAndDownStation;
import loopwright.practice.Zone;
import loopwright.units.Distance;

/** A coach's own drills as JSON ({@code docs/schema/drills.schema.json}); lengths in yards, of putts in feet. */
public final class DrillJson implements DrillFiles {
    @Override
    public List<Drill> read(Path file) {
        JsonField root = JsonText.read(file, "a list of drills (docs/schema/drills.schema.json)");
        return root.get("drills").list().stream()
                .map(f -> f.build(DrillJson::drill))
                .toList();
    }

    private static Drill drill(JsonField f) {
        return new Drill(
                f.text("name"),
                f.choice("facility", Facility.class),
                f.whole("minutes"),
                f.text("purpose"),
                f.text("setUp"),
                f.text("scoring"),
                f.find("tells").isPresent() ? f.text("tells") : "",
                f.get("stations").list().stream()
                        .map(s -> s.build(DrillJson::station))
                        .toList());
    }

    private static Station station(JsonField f) {
        int tries = f.whole("tries");
        if (f.find("putt").isPresent()) {
            return new PuttStation(
                    f.choice("putt", PuttStation.Task.class), f.number("feet") * Distance.METRES_PER_FOOT, tries);
        }
        DrillShot shot = f.choice("shot", DrillShot.class);
        double metres = f.number("yards") * Distance.METRES_PER_YARD;
        if (f.find("upAndDown").isPresent() && f.flag("upAndDown")) {
            return new UpAndDownStation(shot, metres, tries);
        }
        List<Zone> zones = new ArrayList<>();
        for (JsonField z : f.get("zones").list()) {
            zones.add(z.build(DrillJson::zone));
        }
        return new ShotStation(shot, metres, zones, tries);
    }

    private static Zone zone(JsonField f) {
        Zone.Kind kind = f.choice("kind", Zone.Kind.class);
        return switch (kind) {
            case INSIDE -> Zone.inside(yards(f, "radiusYards"));
            case LANDS -> Zone.lands(yards(f, "radiusYards"));
            case CORRIDOR -> Zone.corridor(yards(f, "widthYards"));
            case HALF -> Zone.half(yards(f, "widthYards"), yards(f, "depthYards"));
            case OUT -> Zone.out();
        };
    }

    private static double yards(JsonField f, String name) {
        return f.number(name) * Distance.METRES_PER_YARD;
    }
}
