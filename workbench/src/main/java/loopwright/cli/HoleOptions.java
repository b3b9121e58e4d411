package loopwright.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Options about single holes: where the round begins, where holes are cut, what may be played. */
final class HoleOptions {
    @Option(
            names = "--start-hole",
            defaultValue = "0",
            paramLabel = "H",
            description = "The hole the round begins with, e.g. 10; the others follow in their order.")
    int startHole;

    @Option(
            names = "--hole-location",
            paramLabel = "H:FRONT,LEFT",
            description = "Paces from the front and from the left edge of green H, e.g. 7:12,5 (or 7:12,right 4).")
    List<String> holeLocations = new ArrayList<>();

    @Option(names = "--forbid", paramLabel = "LOCK", description = "\"hole 1: driver\" is not played on hole 1.")
    List<String> forbid = new ArrayList<>();

    @Option(names = "--require", paramLabel = "LOCK", description = "\"hole 1: 3-wood\" is played from the tee.")
    List<String> require = new ArrayList<>();
}
