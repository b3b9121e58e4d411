package loopwright.player;

/** The shapes of a swing's components as arrays, index 0 the solid one (whose spreads are not fixed). */
final class FitShapes {
    /** Carry as a share of the solid mean, and its SD as a share of the trend. */
    final double[] carry;

    final double[] carrySd;
    /** Direction relative to the solid mean, and its SD, radians. */
    final double[] turn;

    final double[] turnSd;

    FitShapes(ShotPattern p) {
        int n = p.mishits().size() + 1;
        carry = new double[n];
        carrySd = new double[n];
        turn = new double[n];
        turnSd = new double[n];
        carry[0] = 1;
        for (int k = 1; k < n; k++) {
            Mishit m = p.mishits().get(k - 1);
            carry[k] = m.carryFactor();
            carrySd[k] = m.carryFactorSd();
            turn[k] = m.directionRadians();
            turnSd[k] = m.directionSdRadians();
        }
    }

    int components() {
        return carry.length;
    }
}
