package loopwright.scoring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import loopwright.units.Distance;

/** Short ways to write records in tests. */
final class Records {
    private Records() {}

    static ShotRecord shot(Lie lie, double yards, int penaltyStrokes) {
        return new ShotRecord(Optional.empty(), lie, Distance.ofYards(yards), Optional.empty(), penaltyStrokes);
    }

    static ShotRecord putt(double feet) {
        return shot(Lie.GREEN, feet / 3, 0);
    }

    static HoleRecord ofShots(int number, int par, ShotRecord... shots) {
        return ofShots(number, par, HoleEnd.HOLED, Optional.empty(), List.of(shots));
    }

    static HoleRecord ofShots(int number, int par, HoleEnd end, Optional<Stroke> conceded, List<ShotRecord> shots) {
        return new HoleRecord(
                number,
                OptionalInt.of(par),
                Optional.empty(),
                OptionalInt.empty(),
                end,
                Set.of(),
                HoleCounts.NONE,
                shots,
                conceded);
    }

    static HoleRecord ofCounts(int number, int par, double lengthYards, int score, HoleCounts counts) {
        return new HoleRecord(
                number,
                OptionalInt.of(par),
                lengthYards > 0 ? Optional.of(Distance.ofYards(lengthYards)) : Optional.empty(),
                OptionalInt.of(score),
                HoleEnd.HOLED,
                Set.of(),
                counts,
                List.of(),
                Optional.empty());
    }

    static HoleCounts counts(int penalties, int chips, double firstPuttFeet, int putts) {
        return new HoleCounts(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.of(penalties),
                OptionalInt.of(chips),
                firstPuttFeet > 0 ? Optional.of(Distance.ofFeet(firstPuttFeet)) : Optional.empty(),
                OptionalInt.of(putts));
    }

    static RoundRecord round(List<HoleRecord> holes) {
        return new RoundRecord(
                "1", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), false, false, holes);
    }
}
