package loopwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loopwright.action.DrillCards;
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
        if (!(corridorYards >= 5 && corridorYards <= 150)) {
            throw new UserFault("--corridor " + corridorYards + " is no room for a tee shot; give 5 to 150 yards.");
        }
        return cards.drills(
                Optional.ofNullable(own), Distance.ofYards(corridorYards).metres());
    }
}
