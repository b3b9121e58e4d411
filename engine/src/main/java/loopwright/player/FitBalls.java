package loopwright.player;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The balls of a log as arrays: measured ones first, then one entry per counted ball, whose place is drawn anew in every
 * sweep. NaN: not measured.
 */
final class FitBalls {
    final int measured;
    final int size;
    final int[] swing;
    final int[] session;
    final double[] weight;
    final boolean[] course;
    final boolean[] mat;
    final boolean[] rangeBall;
    /** Carry in metres; from the total and the trend's run where only that was measured. */
    final double[] carry;

    final double[] direction;
    /** Zones of the counted balls, index minus {@link #measured}. */
    final List<Zone> zones = new ArrayList<>();

    final int sessions;
    /** Mean weight of a session's balls: an old session tells less of today's player as a whole, too. */
    final double[] sessionWeight;

    final double[] runShare;

    FitBalls(ShotLog log, FitSwings swings, FitOptions options) {
        measured = log.shots().size();
        size = measured + log.counts().stream().mapToInt(BallCount::balls).sum();
        swing = new int[size];
        session = new int[size];
        weight = new double[size];
        course = new boolean[size];
        mat = new boolean[size];
        rangeBall = new boolean[size];
        carry = new double[size];
        direction = new double[size];
        runShare = runShares(log, swings);
        int i = 0;
        for (Shot shot : log.shots()) {
            place(i, swings.index(shot.club(), shot.effort()), shot.setting(), shot.session());
            weight[i] = options.weight(shot.ageDays());
            carry[i] = shot.carryMetres().orElse(shot.totalMetres().orElse(0) / (1 + runShare[swing[i]]));
            direction[i] = shot.directionRadians().orElse(Double.NaN);
            i++;
        }
        for (BallCount count : log.counts()) {
            for (int b = 0; b < count.balls(); b++) {
                place(i, swings.index(count.club(), count.effort()), count.setting(), count.session());
                weight[i] = options.weight(count.ageDays());
                carry[i] = Double.NaN;
                direction[i] = Double.NaN;
                zones.add(count.zone());
                i++;
            }
        }
        sessions = java.util.Arrays.stream(session).max().orElse(-1) + 1;
        sessionWeight = sessionWeights();
    }

    private void place(int i, int j, Setting setting, int number) {
        swing[i] = j;
        session[i] = number;
        course[i] = setting.onCourse();
        mat[i] = setting.ground() == Setting.Ground.MAT;
        rangeBall[i] = setting.ball() == Setting.Ball.RANGE;
    }

    private double[] sessionWeights() {
        double[] sum = new double[sessions];
        int[] count = new int[sessions];
        for (int i = 0; i < size; i++) {
            sum[session[i]] += weight[i];
            count[session[i]]++;
        }
        for (int s = 0; s < sessions; s++) {
            sum[s] = count[s] == 0 ? 1 : sum[s] / count[s];
        }
        return sum;
    }

    /** Balls of one swing, whatever their weight. */
    int count(int j) {
        return (int) java.util.Arrays.stream(swing).filter(s -> s == j).count();
    }

    /** Median run share of the balls with carry and total, drawn to the trend's by {@link PriorTable#RUN_BALLS}. */
    private static double[] runShares(ShotLog log, FitSwings swings) {
        double[] out = new double[swings.size()];
        for (int j = 0; j < out.length; j++) {
            ShotPattern p = swings.pattern(j);
            FitSwings.Key key = swings.key(j);
            double[] seen = log.shots().stream()
                    .filter(s -> s.club().equals(key.club()) && s.effort().equals(key.effort()))
                    .map(FitBalls::runShare)
                    .flatMapToDouble(OptionalDouble::stream)
                    .sorted()
                    .toArray();
            double trend = p.runMetres() / p.carryMetres();
            double median = seen.length == 0 ? 0 : seen[seen.length / 2];
            out[j] = (trend * PriorTable.RUN_BALLS + median * seen.length) / (PriorTable.RUN_BALLS + seen.length);
        }
        return out;
    }

    private static OptionalDouble runShare(Shot s) {
        if (s.carryMetres().isEmpty()
                || s.totalMetres().isEmpty()
                || !(s.carryMetres().getAsDouble() > 0)) {
            return OptionalDouble.empty();
        }
        double share = s.totalMetres().getAsDouble() / s.carryMetres().getAsDouble() - 1;
        return OptionalDouble.of(Math.max(0, Math.min(1, share)));
    }
}
