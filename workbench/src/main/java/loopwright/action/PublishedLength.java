package loopwright.action;

import loopwright.units.Distance;

/**
 * Lengths recommended by driving distance: USGA and PGA of America, 2011. Between two rows of the table straight; beyond
 * its ends the last row.
 *
 * @param driveMetres the average drive it was looked up for
 */
public record PublishedLength(double driveMetres, double shortestMetres, double longestMetres) {
    /** Average drive, shortest and longest course of 18 holes, yards. */
    private static final double[][] ROWS = {
        {100, 2100, 2300},
        {125, 2800, 3000},
        {150, 3500, 3700},
        {175, 4400, 4600},
        {200, 5200, 5400},
        {225, 5800, 6000},
        {250, 6200, 6400},
        {275, 6700, 6900},
        {300, 7150, 7400},
    };

    /** For an average drive of a player, mishits included. */
    public static PublishedLength forDrive(double driveMetres) {
        double yards = Distance.ofMetres(driveMetres).yards();
        return new PublishedLength(driveMetres, column(1, yards), column(2, yards));
    }

    private static double column(int column, double drive) {
        int above = 1;
        while (above < ROWS.length - 1 && drive > ROWS[above][0]) {
            above++;
        }
        double[] a = ROWS[above - 1];
        double[] b = ROWS[above];
        double share = Math.max(0, Math.min(1, (drive - a[0]) / (b[0] - a[0])));
        return Distance.ofYards(a[column] + share * (b[column] - a[column])).metres();
    }

    /** How far a length lies outside the published ones, 0 inside. */
    public double outsideMetres(double lengthMetres) {
        return Math.max(0, Math.max(shortestMetres - lengthMetres, lengthMetres - longestMetres));
    }
}
