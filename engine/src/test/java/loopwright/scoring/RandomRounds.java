package loopwright.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import loopwright.units.Distance;

/** Rounds as nobody plays them: any lies and distances, any tier, any end. */
final class RandomRounds {
    private RandomRounds() {}

    /** Holes of strokes and of counts, finished or not. */
    static RoundRecord anyTier(SplittableRandom random) {
        return round(random, true);
    }

    /** Holes of strokes, all holed out. */
    static RoundRecord holedOut(SplittableRandom random) {
        return round(random, false);
    }

    private static RoundRecord round(SplittableRandom random, boolean anyTier) {
        List<HoleRecord> holes = new ArrayList<>();
        for (int number = 1; number <= 18; number++) {
            holes.add(
                    anyTier && random.nextInt(3) == 0
                            ? randomCounts(random, number)
                            : randomShots(random, number, anyTier));
        }
        return Records.round(holes);
    }

    private static HoleRecord randomCounts(SplittableRandom random, int number) {
        int putts = random.nextInt(4);
        HoleCounts counts =
                Records.counts(random.nextInt(2), random.nextInt(2), putts > 0 ? random.nextDouble(1, 80) : 0, putts);
        double length = random.nextInt(3) == 0 ? 0 : random.nextDouble(90, 600);
        return Records.ofCounts(number, random.nextInt(3, 6), length, putts + random.nextInt(1, 6), counts);
    }

    private static HoleRecord randomShots(SplittableRandom random, int number, boolean anyEnd) {
        List<ShotRecord> shots = new ArrayList<>();
        shots.add(Records.shot(Lie.TEE, random.nextDouble(90, 600), random.nextInt(2)));
        for (int n = random.nextInt(8); n > 0; n--) {
            Lie lie = Lie.values()[random.nextInt(Lie.values().length)];
            shots.add(Records.shot(lie, random.nextDouble(0.3, 400), random.nextInt(8) / 7));
        }
        HoleEnd end = anyEnd ? HoleEnd.values()[random.nextInt(3)] : HoleEnd.HOLED;
        Optional<Stroke> conceded = end == HoleEnd.CONCEDED
                ? Optional.of(new Stroke(Lie.GREEN, Distance.ofFeet(random.nextDouble(1, 4)), 0))
                : Optional.empty();
        return Records.ofShots(number, random.nextInt(3, 6), end, conceded, shots);
    }
}
