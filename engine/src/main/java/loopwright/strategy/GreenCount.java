package loopwright.strategy;

import loopwright.putting.LevelGreenOdds;

/** How many putts are needed from the places on a green that a ball arrives at. */
interface GreenCount {
    int MOST_PUTTS = LevelGreenOdds.MOST_PUTTS;

    /** The chances of arriving in the cells of a hole as chances of arriving at these places. */
    double[] gather(double[] cells);

    /** Chance of needing so many putts from a place, 0 (dropped in from off the green) to {@link #MOST_PUTTS} or more. */
    double chance(int place, int putts);
}
