package loopwright.strategy;

import loopwright.putting.PuttingOdds;

/**
 * A level green by the distance to the hole alone, place 0 being the hole that a ball drops into from off the green: who
 * putts is then a small table, and many players share one green.
 */
final class GreenNodes implements GreenCount {
    private final GreenCells green;
    /** By place, then putts. */
    private final double[][] chance;

    /** @param green with distances among the nodes of the odds */
    GreenNodes(GreenCells green, PuttingOdds odds) {
        this.green = green;
        chance = new double[green.nodes.length + 1][MOST_PUTTS + 1];
        chance[0][0] = 1;
        for (int n = 0; n < green.nodes.length; n++) {
            for (int putts = 1; putts <= MOST_PUTTS; putts++) {
                chance[n + 1][putts] = odds.probability(green.nodes[n], putts);
            }
        }
    }

    @Override
    public double[] gather(double[] cells) {
        return green.byNode(cells);
    }

    @Override
    public double chance(int place, int putts) {
        return chance[place][putts];
    }
}
