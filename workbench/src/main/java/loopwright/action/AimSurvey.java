package loopwright.action;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.strategy.Advice;

/** Values the aims round one from a spot, every club at its own length, touch shots at several. */
final class AimSurvey {
    /** Aims to either side of the middle. */
    private static final int ASIDE = 8;
    /** Lengths of a touch shot to either side of the middle. */
    private static final int ALONG = 4;
    /** A club that costs so much at its best aim is no part of the question, strokes. */
    private static final double DEAR = 1;
    /** Shots whose lengths differ by less share a row: the lines of the chart are not read closer. */
    private static final double SAME_LENGTH_METRES = 2;

    private final PlannedShots shots;
    private final Supplier<Advice> advice;

    /** {@code advice} gives one of its own to each row: they are worked out side by side. */
    AimSurvey(PlannedShots shots, Supplier<Advice> advice) {
        this.shots = shots;
        this.advice = advice;
    }

    private record Shot(int number, String label, double metres) {}

    /** The field round an aim from a spot, in steps of a reader's unit. */
    AimField around(
            Place middle,
            Place ball,
            Surface lie,
            Situation situation,
            List<RoundPlan.Alternative> ways,
            LengthUnit unit) {
        double length = ball.distanceTo(middle);
        double bearing = ball.bearingTo(middle);
        double step = stepUnits(length) * unit.inMetres();
        List<Double> aside =
                IntStream.rangeClosed(-ASIDE, ASIDE).mapToObj(i -> i * step).toList();
        List<AimField.Row> rows = Cores.all(
                rows(shots(ball, bearing, length, step, ways)),
                shots -> row(shots, ball, lie, situation, bearing, aside),
                Watch.NONE);
        return new AimField(ball, bearing, aside, rows);
    }

    /** Wide apart for a long shot, near for a chip. */
    private static double stepUnits(double lengthMetres) {
        return lengthMetres >= 100 ? 5 : lengthMetres >= 40 ? 2.5 : 1;
    }

    private List<Shot> shots(Place ball, double bearing, double length, double step, List<RoundPlan.Alternative> ways) {
        List<Shot> out = new ArrayList<>();
        double least =
                ways.stream().mapToDouble(RoundPlan.Alternative::cost).min().orElse(0);
        for (RoundPlan.Alternative way : ways) {
            int shot = shots.shotNamed(way.club());
            if (way.cost() > least + DEAR) {
                continue;
            }
            if (!shots.isTouch(shot)) {
                out.add(new Shot(shot, way.club(), ball.distanceTo(way.aim())));
                continue;
            }
            for (int i = -ALONG; i <= ALONG; i++) {
                double metres = length + i * step;
                Place end = shots.reach(ball, shot, ball.along(bearing, Math.max(1, metres)));
                if (Math.abs(ball.distanceTo(end) - metres) < SAME_LENGTH_METRES / 2) {
                    out.add(new Shot(shot, way.club(), metres));
                }
            }
        }
        return out.stream().sorted(Comparator.comparingDouble(Shot::metres)).toList();
    }

    private static List<List<Shot>> rows(List<Shot> sorted) {
        List<List<Shot>> out = new ArrayList<>();
        for (Shot shot : sorted) {
            if (out.isEmpty() || shot.metres - out.get(out.size() - 1).get(0).metres >= SAME_LENGTH_METRES) {
                out.add(new ArrayList<>());
            }
            out.get(out.size() - 1).add(shot);
        }
        return out;
    }

    private AimField.Row row(
            List<Shot> shots, Place ball, Surface lie, Situation situation, double bearing, List<Double> aside) {
        Advice own = advice.get();
        double metres = shots.get(0).metres;
        List<AimField.Aim> aims = new ArrayList<>();
        for (double beside : aside) {
            double turned = AimField.bearing(bearing, beside, metres);
            aims.add(AimField.cheapest(shots.stream()
                    .map(s -> new AimField.Aim(
                            s.label,
                            own.rate(ball, lie, situation, s.number, ball.along(turned, s.metres))
                                    .expected()))
                    .toList()));
        }
        return new AimField.Row(metres, aims);
    }
}
