package loopwright.player;

/**
 * How the clubs of one bag relate in length: carry(club) = driver carry * share(loft) * (1 - loss(loft) * slowness), with
 * slowness = 1 - driver carry / fast carry, at least 0. Long irons of a slow swing therefore carry no further than his
 * mid-irons. Shares and losses are in {@link PriorTable}; from 70 m to 280 m of driver carry; no published check exists.
 */
final class BagTrend {
    private final double driverCarryMetres;

    BagTrend(double driverCarryMetres) {
        if (!(driverCarryMetres > 0)) {
            throw new IllegalArgumentException("a driver carry is above zero, not " + driverCarryMetres);
        }
        this.driverCarryMetres = driverCarryMetres;
    }

    /** The trend on which this club carries so far. Carry rises with the driver's, so bisection finds it. */
    static BagTrend through(Club club, double carryMetres) {
        double low = carryMetres / 10;
        double high = carryMetres * 10;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (new BagTrend(middle).carryMetres(club) < carryMetres) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new BagTrend((low + high) / 2);
    }

    double driverCarryMetres() {
        return driverCarryMetres;
    }

    double slowness() {
        return Math.max(0, 1 - driverCarryMetres / PriorTable.FAST_DRIVER_CARRY_METRES);
    }

    double carryMetres(Club club) {
        double loft = ClubTable.loftDegrees(club);
        double share = PriorTable.byLoft(shares(club), loft);
        return driverCarryMetres * share * (1 - PriorTable.byLoft(losses(club), loft) * slowness());
    }

    double runMetres(Club club, double carryMetres) {
        if (club.family() == Club.Family.DRIVER) {
            return Math.min(PriorTable.DRIVER_RUN_METRES, PriorTable.DRIVER_RUN_LARGEST_SHARE * carryMetres);
        }
        double share = PriorTable.byLoft(PriorTable.RUN_SHARE, ClubTable.loftDegrees(club));
        return carryMetres * share * (1 + slowness());
    }

    double apexMetres(Club club, double carryMetres) {
        double share = PriorTable.byLoft(PriorTable.APEX_SHARE, ClubTable.loftDegrees(club));
        return carryMetres * share * (1 - 2 * PriorTable.SLOW_APEX_LOSS * Math.min(0.5, slowness()));
    }

    double descentRadians(Club club) {
        double degrees = PriorTable.byLoft(PriorTable.DESCENT_DEGREES, ClubTable.loftDegrees(club));
        return Math.toRadians(degrees * (1 - 2 * PriorTable.SLOW_DESCENT_LOSS * Math.min(0.5, slowness())));
    }

    private static double[] shares(Club club) {
        return switch (club.family()) {
            case DRIVER, WOOD -> PriorTable.WOOD_SHARE;
            case HYBRID -> PriorTable.HYBRID_SHARE;
            case IRON, WEDGE, PUTTER -> PriorTable.IRON_SHARE;
        };
    }

    private static double[] losses(Club club) {
        return switch (club.family()) {
            case DRIVER, WOOD -> PriorTable.WOOD_LOSS;
            case HYBRID -> PriorTable.HYBRID_LOSS;
            case IRON, WEDGE, PUTTER -> PriorTable.IRON_LOSS;
        };
    }
}
