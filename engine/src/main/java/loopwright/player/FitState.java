package loopwright.player;

import java.util.Arrays;
import java.util.List;

/** The unknowns of a fit at one sweep. Lengths are relative deviations from the trend, scales are logarithms. */
final class FitState {
    private static final int FAMILIES = Club.Family.values().length;

    final double[] carry;
    final double[] direction;
    final double[] logDirectionSd;
    final double[] logCarrySd;
    final double[] sessionCarry;
    final double[] sessionDirection;
    final double[] sessionLogSpread;

    /** Of the logarithms above and the rates below, kept by {@link #refresh}. */
    final double[] directionSd;

    final double[] carrySd;
    final double[] sessionSpread;
    final double[] mishitRate;
    double rangeSpread;

    double rangeBall = -PriorTable.RANGE_BALL_LOSS;
    double logWidening = Math.log(PriorTable.RANGE_WIDENING);
    double sharedDirection;
    double sharedCarry;
    double sharedMishits;
    final double[] familyMishits = new double[FAMILIES];
    /** Shares of the kinds of mishit, by family; empty for a family without a club. */
    final double[][] kindShare = new double[FAMILIES][];

    double sessionDirectionSd = PriorTable.SESSION_DIRECTION_SD;
    double sessionCarrySd = PriorTable.SESSION_CARRY_SD;
    double sessionLogSpreadSd = PriorTable.SESSION_LOG_SPREAD_SD;

    FitState(FitSwings swings, int sessions) {
        int n = swings.size();
        carry = new double[n];
        direction = new double[n];
        logDirectionSd = new double[n];
        logCarrySd = new double[n];
        sessionCarry = new double[sessions];
        sessionDirection = new double[sessions];
        sessionLogSpread = new double[sessions];
        directionSd = new double[n];
        carrySd = new double[n];
        sessionSpread = new double[sessions];
        mishitRate = new double[n];
        Arrays.fill(kindShare, new double[0]);
        for (int j = 0; j < n; j++) {
            ShotPattern p = swings.pattern(j);
            logDirectionSd[j] = Math.log(p.directionSdRadians());
            logCarrySd[j] = Math.log(p.carrySdMetres() / p.carryMetres());
            kindShare[swings.family(j)] = shares(p.mishits());
        }
        refresh(swings);
    }

    /** Share of a swing's balls that are mishits from a course lie. */
    double mishitRate(FitSwings swings, int j) {
        double factor = Math.exp(sharedMishits + familyMishits[swings.family(j)]);
        return Math.min(PriorTable.MOST_MISHITS, swings.pattern(j).mishitRate() * factor);
    }

    /** Brings the kept exponentials up to date. */
    void refresh(FitSwings swings) {
        for (int j = 0; j < carrySd.length; j++) {
            directionSd[j] = Math.exp(logDirectionSd[j]);
            carrySd[j] = Math.exp(logCarrySd[j]);
            mishitRate[j] = mishitRate(swings, j);
        }
        for (int s = 0; s < sessionSpread.length; s++) {
            sessionSpread[s] = Math.exp(sessionLogSpread[s]);
        }
        rangeSpread = Math.exp(-logWidening);
    }

    private static double[] shares(List<Mishit> mishits) {
        double sum = mishits.stream().mapToDouble(Mishit::rate).sum();
        return mishits.stream().mapToDouble(m -> m.rate() / sum).toArray();
    }
}
