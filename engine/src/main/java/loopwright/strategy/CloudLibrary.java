package loopwright.strategy;

import java.util.concurrent.ConcurrentHashMap;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.StrikeModel;

/**
 * The clouds of one player, made on first use and shared by all holes. Two families that have no draw in common:
 * choices are made on one, values are reported on the other.
 */
final class CloudLibrary {
    /** Touch shots are tabulated by intended length in steps of this size. */
    static final double TOUCH_STEP_METRES = 0.5;

    private final StrikeModel strikes;
    private final long seed;
    private final ConcurrentHashMap<Key, Cloud> clouds = new ConcurrentHashMap<>();

    private record Key(int shot, Surface surface, Situation situation, int length, int points, boolean report) {}

    CloudLibrary(StrikeModel strikes, long seed) {
        this.strikes = strikes;
        this.seed = seed;
    }

    /** The cloud of a shot from a lie; for touch shots meant to go {@code metres}, rounded to the table's step. */
    Cloud cloud(int shot, Surface surface, Situation situation, double metres, int points, boolean report) {
        int length = strikes.isTouch(shot) ? lengthStep(shot, metres) : 0;
        return clouds.computeIfAbsent(new Key(shot, surface, situation, length, points, report), this::make);
    }

    private int lengthStep(int shot, double metres) {
        return (int) Math.round(strikes.touch(shot).possibleMetres(metres) / TOUCH_STEP_METRES);
    }

    private Cloud make(Key k) {
        long own = seed * 0x9E3779B97F4A7C15L
                + (((k.shot * 31L + k.surface.ordinal()) * 31 + k.situation.ordinal()) * 1009 + k.length) * 2
                + (k.report ? 1 : 0);
        return Cloud.of(
                strikes,
                k.shot,
                k.length * TOUCH_STEP_METRES,
                strikes.lie(k.shot, k.surface, k.situation),
                k.points,
                own);
    }
}
