package loopwright.strategy;

import java.lang.ref.SoftReference;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.AimedSwing;
import loopwright.player.StrikeModel;
import org.jspecify.annotations.Nullable;

/**
 * The clouds of one player on one day, made on first use and shared by all holes. Two families that have no draw in common:
 * choices are made on one, values are reported on the other. A windy round asks for more clouds than a small heap holds:
 * those that memory is needed for are let go and made again, the same to the bit.
 */
final class CloudLibrary {
    /** Touch shots are tabulated by intended length in steps of this size. */
    private static final double TOUCH_STEP_METRES = 0.5;

    /** Bearings of the aim for which a windy day is flown; between two of them clouds are read straight. */
    static final int BEARINGS = 32;

    private final StrikeModel strikes;
    private final long seed;
    private final AtomicReferenceArray<@Nullable AimedSwing> flown;
    private final ConcurrentHashMap<Key, SoftReference<Cloud>> clouds = new ConcurrentHashMap<>();

    private record Key(
            int shot, Surface surface, Situation situation, int length, int bearing, int points, boolean report) {}

    CloudLibrary(StrikeModel strikes, long seed) {
        this.strikes = strikes;
        this.seed = seed;
        flown = new AtomicReferenceArray<>(strikes.shots() * BEARINGS);
    }

    /** True if the clouds of a shot depend on the bearing of the aim. */
    boolean turnsWithTheWind(int shot) {
        return strikes.isWindy() && !strikes.isTouch(shot);
    }

    /**
     * The cloud of a shot from a lie.
     *
     * @param metres what a touch shot is meant to go, rounded to the table's step
     * @param bearing of the aim in {@link #BEARINGS}ths of a turn, where it matters, else 0
     */
    Cloud cloud(
            int shot, Surface surface, Situation situation, double metres, int bearing, int points, boolean report) {
        Key key = new Key(shot, surface, situation, length(shot, metres), bearing, points, report);
        SoftReference<Cloud> kept = clouds.get(key);
        Cloud cloud = kept == null ? null : kept.get();
        if (cloud == null) {
            cloud = make(key);
            clouds.put(key, new SoftReference<>(cloud));
        }
        return cloud;
    }

    /** Lets go of all clouds until somebody asks again. */
    void forget() {
        clouds.clear();
    }

    /** The steps of the table that a touch shot is meant to go; 0 for other shots. */
    int length(int shot, double metres) {
        return strikes.isTouch(shot) ? lengthStep(shot, metres) : 0;
    }

    /** The length nearest to a wanted one for which there is a cloud of a touch shot. */
    double touchMetres(int shot, double wanted) {
        return lengthStep(shot, wanted) * TOUCH_STEP_METRES;
    }

    private int lengthStep(int shot, double metres) {
        return (int) Math.round(strikes.touch(shot).possibleMetres(metres) / TOUCH_STEP_METRES);
    }

    private Cloud make(Key k) {
        long own = seed * 0x9E3779B97F4A7C15L
                + (((k.shot * 31L + k.surface.ordinal()) * 31 + k.situation.ordinal()) * 1009 + k.length) * 2
                + (k.report ? 1 : 0);
        Cloud.Recipe recipe = new Cloud.Recipe(
                strikes,
                k.shot,
                k.length * TOUCH_STEP_METRES,
                strikes.lie(k.shot, k.surface, k.situation),
                flown(k.shot, k.bearing));
        return Cloud.of(recipe, k.points, own);
    }

    /** What the day makes of a shot for a bearing: the same for all lies. */
    private @Nullable AimedSwing flown(int shot, int bearing) {
        int at = shot * BEARINGS + bearing;
        AimedSwing known = flown.get(at);
        if (known == null) {
            known = strikes.toward(shot, 2 * Math.PI * bearing / BEARINGS);
            flown.set(at, known);
        }
        return known;
    }
}
