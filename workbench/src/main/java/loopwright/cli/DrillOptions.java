package loopwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loopwright.action.DrillCards;
import loopwright.action.OwnDrills;
import loopwright.action.UserFault;
import loopwright.practice.Drill;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which drills there are. */
final class DrillOptions {
    @Option(
            names = "--drills",
            paramLabel = "FILE",
            description = "Your own drills beside the program's (docs/schema/drills.schema.json).")
    private @Nullable Path own;

    @Option(
            names = "--corridor",
            defaultValue = "35",
            paramLabel = "YARDS",
            description = "Room for the tee shot on your first hole. Default: ${DEFAULT-VALUE} (assumed).")
    private double corridorYards = 35;

    List<Drill> drills(DrillCards cards) {
        return cards.drills(Optional.ofNullable(own), corridorMetres());
    }

    /** The drills of a player of the store: with the file named here, else with those the store keeps for him. */
    List<Drill> drills(OwnDrills kept, DrillCards cards, String player) {
        return own == null ? kept.drills(player, corridorMetres()) : drills(cards);
    }

    private double corridorMetres() {
        if (!(corridorYards >= 5 && corridorYards <= 150)) {
            throw new UserFault("--corridor " + corridorYards + " is no room for a tee shot; give 5 to 150 yards.");
        }
        return Distance.ofYards(corridorYards).metres();
    }
}
