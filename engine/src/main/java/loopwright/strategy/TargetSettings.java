package loopwright.strategy;

/**
 * How finely a target is solved.
 *
 * @param margin a gain in the chance below this is not worth leaving the mean-best option for: the clouds cannot tell it
 * @param clip a chance on a tee this close to 0 or 1 is taken as exactly that
 * @param keepsPlay true to keep of every hole what a ball in play needs to be played on; chances and tee shots need none of it
 */
record TargetSettings(double margin, double clip, boolean keepsPlay) {
    /** Over 18 holes and both ends the clip cuts less than 2e-5. */
    static final TargetSettings STANDARD = new TargetSettings(1e-3, 5e-7, true);

    /** For clouds without chance, on courses made for checks. */
    static final TargetSettings EXACT = new TargetSettings(0, 1e-12, true);

    /** The same for chances and tee shots alone. */
    TargetSettings withoutPlay() {
        return new TargetSettings(margin, clip, false);
    }

    TargetSettings {
        if (!(margin >= 0) || !(clip >= 0 && clip < 0.5)) {
            throw new IllegalArgumentException("margin and clip are zero or a little more");
        }
    }
}
