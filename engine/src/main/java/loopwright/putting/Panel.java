package loopwright.putting;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** Twelve Gauss-Legendre points on an interval. */
final class Panel {
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(12);

    /** What is done with a point and the width it stands for. */
    @FunctionalInterface
    interface Visitor {
        void visit(double point, double width);
    }

    private Panel() {}

    static void forEach(double from, double to, Visitor visitor) {
        if (!(to > from)) {
            return;
        }
        double half = (to - from) / 2;
        double centre = (to + from) / 2;
        for (int i = 0; i < RULE.getNumberOfPoints(); i++) {
            visitor.visit(centre + half * RULE.getPoint(i), half * RULE.getWeight(i));
        }
    }
}
