package loopwright.strategy;

import loopwright.ground.Situation;
import loopwright.ground.Surface;

/** A ball at rest off the green, in cell coordinates, with the trees it sees. */
record Spot(double column, double row, Surface surface, Situation situation, boolean onTee, TreeFan trees) {}
