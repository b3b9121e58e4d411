package loopwright.player;

import java.util.ArrayList;
import java.util.List;

/** Kept draws of a fit, and their means. */
final class FitDraws {
    private final FitSwings swings;
    private final FitBalls balls;
    private final List<FitDraw> draws = new ArrayList<>();
    private final double[] products;
    private final double[] weights;
    private double sessionDirectionSd;
    private double sessionLogSpreadSd;

    FitDraws(FitSwings swings, FitBalls balls) {
        this.swings = swings;
        this.balls = balls;
        products = new double[swings.size()];
        weights = new double[swings.size()];
    }

    void keep(FitState s, FitScales scales) {
        draws.add(new FitDraw(s));
        sessionDirectionSd += s.sessionDirectionSd;
        sessionLogSpreadSd += s.sessionLogSpreadSd;
        scales.addProducts(products, weights);
    }

    List<FitDraw> draws() {
        return draws;
    }

    DayEffect day() {
        return new DayEffect(sessionDirectionSd / draws.size(), sessionLogSpreadSd / draws.size());
    }

    /** Mean of the draws: what to plan with. */
    FitDraw mean() {
        return FitDraw.mean(draws);
    }

    ShotPattern pattern(FitDraw d, int j) {
        ShotPattern prior = swings.pattern(j);
        double trend = prior.carryMetres();
        double carry = trend * Math.max(0.05, 1 + d.carry[j]);
        double[] shares = d.kindShare[swings.family(j)];
        List<Mishit> mishits = new ArrayList<>();
        for (int k = 0; k < shares.length; k++) {
            mishits.add(prior.mishits().get(k).withRate(d.mishitRate[j] * shares[k]));
        }
        return new ShotPattern(
                carry,
                trend * Math.exp(d.logCarrySd[j]),
                d.direction[j],
                Math.exp(d.logDirectionSd[j]),
                correlation(j),
                carry * balls.runShare[j],
                prior.apexMetres() * carry / trend,
                prior.descentRadians(),
                mishits);
    }

    /** Mean product of standardized residuals, drawn to zero by so many balls of none. */
    private double correlation(int j) {
        double perDraw = 1.0 / draws.size();
        double raw = products[j] * perDraw / (weights[j] * perDraw + PriorTable.CORRELATION_BALLS);
        return Math.max(-0.95, Math.min(0.95, raw));
    }
}
