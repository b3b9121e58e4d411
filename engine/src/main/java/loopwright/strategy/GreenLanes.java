package loopwright.strategy;

import loopwright.putting.GreenOdds;
import loopwright.putting.LevelGreenOdds;

/** The chance of the target from every cell of the green, lane by lane, under fixed putting or a choice of paces. */
interface GreenLanes {

    /** Solves a lane; the ones after it have been. */
    void solve(Lane lane);

    /** Writes the chances of a solved lane into the cells of the green. */
    void read(Lane lane, double[] cells);

    /** Putting at the pace that needs fewest putts, whatever is at stake. */
    static GreenLanes fixed(GreenCells green, HandOver after) {
        return new GreenLanes() {
            @Override
            public void solve(Lane lane) {
                // read from the counts of putts directly
            }

            @Override
            public void read(Lane lane, double[] cells) {
                double[] chance = new double[GreenCells.MOST_PUTTS + 1];
                for (int putts = 0; putts < chance.length; putts++) {
                    chance[putts] = after.at(lane.after(putts).inHand);
                }
                for (int i = 0; i < green.cells.length; i++) {
                    double sum = 0;
                    for (int putts = 0; putts < chance.length; putts++) {
                        sum += green.chance(i, putts) * chance[putts];
                    }
                    cells[green.cells[i]] = sum;
                }
            }
        };
    }

    /** Putting for the target where the odds offer paces, else fixed. */
    static GreenLanes chosen(GreenCells green, GreenOdds odds, HandOver after, PaceChoice paces) {
        return odds instanceof GreenOdds.Level level && level.odds() instanceof LevelGreenOdds offered
                ? new PaceLanes(green, offered, after, paces)
                : fixed(green, after);
    }
}
