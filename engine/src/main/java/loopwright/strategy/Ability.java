package loopwright.strategy;

import loopwright.player.StrikeModel;
import loopwright.putting.PuttingOdds;

/** What one player can do on one day, as the solver needs it; shared by all holes of a round. */
public final class Ability {
    private final StrikeModel strikes;
    private final PuttingOdds putting;
    private final CloudLibrary clouds;
    private final Reach reach;

    /** The seed decides all clouds of this player. */
    public Ability(StrikeModel strikes, PuttingOdds putting, long seed) {
        this.strikes = strikes;
        this.putting = putting;
        this.clouds = new CloudLibrary(strikes, seed);
        this.reach = new Reach(strikes);
    }

    public StrikeModel strikes() {
        return strikes;
    }

    public PuttingOdds putting() {
        return putting;
    }

    /** Lets go of what was worked out until somebody asks again. */
    public void forgetClouds() {
        clouds.forget();
    }

    Reach reach() {
        return reach;
    }

    CloudLibrary clouds() {
        return clouds;
    }
}
