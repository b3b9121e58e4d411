package loopwright.scoring;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import loopwright.units.Distance;

/**
 * What each {@link Obstacle} cost in one round against the benchmark, strokes over 18 holes; an obstacle whose holes or
 * strokes the record does not tell is missing.
 */
final class ObstacleCount {
    private static final int ROUND_HOLES = 18;
    private static final double SHORT_FEET = 6;
    private static final double WEDGE_YARDS = 125;

    private final BenchmarkTable benchmark;
    private final BenchmarkBaseline baseline;
    /** Strokes lost and holes told, by obstacle. */
    private final Map<Obstacle, double[]> sums = new EnumMap<>(Obstacle.class);

    private ObstacleCount(BenchmarkTable benchmark) {
        this.benchmark = benchmark;
        baseline = new BenchmarkBaseline(benchmark);
    }

    static Map<Obstacle, Double> of(RoundRecord round, BenchmarkTable benchmark) {
        ObstacleCount count = new ObstacleCount(benchmark);
        round.holes().forEach(count::hole);
        Map<Obstacle, Double> out = new EnumMap<>(Obstacle.class);
        count.sums.forEach((obstacle, s) -> out.put(obstacle, s[0] * ROUND_HOLES / s[1]));
        return out;
    }

    private void add(Obstacle obstacle, double lost) {
        double[] s = sums.computeIfAbsent(obstacle, o -> new double[2]);
        s[0] += lost;
        s[1]++;
    }

    private void hole(HoleRecord hole) {
        BenchmarkTable.Hole expected = benchmark.holes().get(hole.number());
        if (expected == null) {
            return;
        }
        if (hole.par().isPresent() && hole.score().isPresent()) {
            int beyond = Math.max(0, hole.score().getAsInt() - hole.par().getAsInt() - 1);
            add(Obstacle.DOUBLES, beyond - expected.beyondBogey());
        }
        hole.penaltyStrokes().ifPresent(p -> add(Obstacle.PENALTIES, p - expected.penalties()));
        if (hole.end() == HoleEnd.HOLED) {
            putts(hole);
        }
        if (!hole.shots().isEmpty()) {
            parts(hole);
        }
    }

    private void putts(HoleRecord hole) {
        if (hole.putts().isEmpty()) {
            return;
        }
        int putts = hole.putts().getAsInt();
        Optional<Distance> first = hole.firstPutt();
        if (putts == 0) {
            add(Obstacle.THREE_PUTTS, 0);
            add(Obstacle.SHORT_PUTTS, 0);
        } else if (first.isPresent()) {
            add(Obstacle.THREE_PUTTS, Math.max(0, putts - 2) - at(benchmark.threePutts(), first.get()));
            add(Obstacle.SHORT_PUTTS, hole.shots().isEmpty() ? firstMissed(first.get(), putts) : missed(hole));
        }
    }

    /** Of counts only the first putt is known. */
    private double firstMissed(Distance first, int putts) {
        return first.feet() > SHORT_FEET ? 0 : missed(first, putts == 1);
    }

    private double missed(HoleRecord hole) {
        double lost = 0;
        for (int i = 0; i < hole.shots().size(); i++) {
            ShotRecord shot = hole.shots().get(i);
            if (shot.lie() == Lie.GREEN && shot.toHole().feet() <= SHORT_FEET) {
                lost += missed(shot.toHole(), i == hole.shots().size() - 1);
            }
        }
        return lost;
    }

    private double missed(Distance putt, boolean holed) {
        return (holed ? 0 : 1) - (1 - at(benchmark.firstPuttHoled(), putt));
    }

    private static double at(Curve byFeet, Distance putt) {
        double feet = Math.min(byFeet.last().at(), Math.max(byFeet.first().at(), putt.feet()));
        return byFeet.valueAt(feet, 1);
    }

    private void parts(HoleRecord hole) {
        HoleGains.of(baseline.forHole(hole.number()), hole).ifPresent(gains -> {
            add(Obstacle.TEE, -gained(gains, Obstacle.TEE));
            add(Obstacle.WEDGES, -gained(gains, Obstacle.WEDGES));
        });
        if (hole.end() == HoleEnd.HOLED) {
            add(Obstacle.UP_AND_DOWNS, around(hole));
        }
    }

    private static double gained(HoleGains gains, Obstacle obstacle) {
        return gains.gains().stream()
                .filter(g -> obstacle == Obstacle.TEE
                        ? g.band().part() == PartOfGame.TEE_SHOTS
                        : g.band().part() == PartOfGame.APPROACH
                                && g.band().below().yards() < WEDGE_YARDS + 1)
                .mapToDouble(Gain::gained)
                .sum();
    }

    /** Strokes from the first place around the green to the hole, less the benchmark's; 0 where the ball was never there. */
    private double around(HoleRecord hole) {
        int left = 0;
        double lost = 0;
        for (int i = hole.shots().size() - 1; i >= 0; i--) {
            ShotRecord shot = hole.shots().get(i);
            left += 1 + shot.penaltyStrokes();
            if (Band.of(shot.stroke(), hole.par()).part() == PartOfGame.AROUND_THE_GREEN) {
                lost = left - baseline.strokesToHoleOut(shot.lie(), shot.toHole());
            }
        }
        return lost;
    }
}
