package loopwright.adapter.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import loopwright.action.RoundImport;
import loopwright.geo.LatLon;
import loopwright.ground.Situation;
import loopwright.scoring.ApproachResult;
import loopwright.scoring.HoleCounts;
import loopwright.scoring.HoleEnd;
import loopwright.scoring.HoleMark;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.Intent;
import loopwright.scoring.Lie;
import loopwright.scoring.RoundRecord;
import loopwright.scoring.ShotRecord;
import loopwright.scoring.Stroke;
import loopwright.scoring.TeeBall;
import loopwright.units.Distance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rounds written as a table read back to the same rounds, in every tier. */
class RoundCsvTextPropertyTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void writtenRoundsReadBack(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        boolean ofShots = seed % 2 == 0;
        List<RoundRecord> rounds = List.of(round(random, "first, \"windy\"", ofShots), round(random, "2", ofShots));
        Path file = folder.resolve("rounds.csv");
        new RoundCsv().write(rounds, file);
        RoundImport read = new RoundCsv().read(file);
        assertThat(read.problems()).isEmpty();
        assertThat(read.ignored()).isEmpty();
        assertThat(read.rounds()).isEqualTo(rounds);
    }

    private static RoundRecord round(SplittableRandom random, String name, boolean ofShots) {
        List<HoleRecord> holes = new ArrayList<>();
        int start = random.nextInt(18);
        for (int i = 0; i < 18; i++) {
            holes.add(hole(random, (start + i) % 18 + 1, ofShots));
        }
        return new RoundRecord(
                name,
                maybe(random, "2026-05-31"),
                maybe(random, "Invented Links; north"),
                maybe(random, "white"),
                maybe(random, "match play"),
                false,
                random.nextBoolean(),
                holes);
    }

    private static HoleRecord hole(SplittableRandom random, int number, boolean ofShots) {
        HoleEnd end = HoleEnd.values()[random.nextInt(3)];
        boolean score = (!ofShots && end != HoleEnd.PICKED_UP) || random.nextInt(4) == 0;
        return new HoleRecord(
                number,
                random.nextBoolean() ? OptionalInt.of(random.nextInt(3, 7)) : OptionalInt.empty(),
                maybe(random, distance(random, 500)),
                score ? OptionalInt.of(random.nextInt(1, 12)) : OptionalInt.empty(),
                end,
                random.nextInt(3) == 0 ? Set.of(HoleMark.values()[random.nextInt(4)]) : Set.of(),
                ofShots ? HoleCounts.NONE : counts(random),
                ofShots ? shots(random) : List.of(),
                ofShots && end == HoleEnd.CONCEDED
                        ? Optional.of(new Stroke(Lie.GREEN, distance(random, 2), 0))
                        : Optional.empty());
    }

    private static HoleCounts counts(SplittableRandom random) {
        return new HoleCounts(
                maybe(random, TeeBall.values()[random.nextInt(4)]),
                maybe(random, "7-iron"),
                maybe(random, ApproachResult.values()[random.nextInt(5)]),
                OptionalInt.of(random.nextInt(3)),
                OptionalInt.empty(),
                maybe(random, distance(random, 20)),
                OptionalInt.of(random.nextInt(4)));
    }

    private static List<ShotRecord> shots(SplittableRandom random) {
        List<ShotRecord> shots = new ArrayList<>();
        for (int n = random.nextInt(1, 7); n > 0; n--) {
            shots.add(new ShotRecord(
                    maybe(random, "wedge"),
                    Lie.values()[random.nextInt(6)],
                    distance(random, 500),
                    maybe(random, place(random)),
                    random.nextInt(3),
                    maybe(random, Situation.values()[random.nextInt(7)]),
                    intent(random)));
        }
        return shots;
    }

    private static Intent intent(SplittableRandom random) {
        return new Intent(
                maybe(random, "8-iron"),
                maybe(random, place(random)),
                maybe(random, Lie.values()[random.nextInt(6)]),
                maybe(random, random.nextBoolean()));
    }

    private static LatLon place(SplittableRandom random) {
        return new LatLon(random.nextInt(-80, 80) + 0.123456789, random.nextInt(-170, 170) - 0.5);
    }

    /** To the tenth of a millimetre, as tables are written. */
    private static Distance distance(SplittableRandom random, double most) {
        return Distance.ofMetres(Math.rint(random.nextDouble(most) * 1e4) / 1e4);
    }

    private static <T> Optional<T> maybe(SplittableRandom random, T value) {
        return random.nextBoolean() ? Optional.of(value) : Optional.empty();
    }
}
