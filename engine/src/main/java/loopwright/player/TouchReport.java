package loopwright.player;

/**
 * A fitted short shot.
 *
 * @param shot to plan with: posterior means of the logarithms
 * @param spread factor on the spread of the level, with its 90 % interval
 * @param mishitRate share of all such shots from a good lie
 * @param atMetres the usual distance that the next two speak of
 * @param halfWithinMetres every second ball stops within this of the hole
 * @param holed chance of holing it
 */
public record TouchReport(
        TouchShot shot,
        Interval spread,
        Interval mishitRate,
        double atMetres,
        Interval halfWithinMetres,
        Interval holed) {}
