package loopwright.strategy;

import java.lang.ref.SoftReference;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Function;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.AimedSwing;
import loopwright.player.LieEffect;
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
    private final ConcurrentHashMap<Long, SoftReference<Cloud>> clouds = new ConcurrentHashMap<>();

    /** Of shots that the day changes: what all bearings share. */
    private final ConcurrentHashMap<Long, SoftReference<Cloud.Drawn>> drawn = new ConcurrentHashMap<>();

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
     * What a cloud is of.
     *
     * @param length of a touch shot, in steps of the table, else 0
     * @param bearing of the aim in {@link #BEARINGS}ths of a turn, where it matters, else 0
     */
    record Asked(int shot, Surface surface, Situation situation, int length, int bearing, int points, boolean report) {
        /** Odd, so no two numbers become one; spreads them over a hash table (the golden ratio of 64 bits). */
        private static final long SPREAD = 0x9E3779B97F4A7C15L;

        Asked toward(int other) {
            return new Asked(shot, surface, situation, length, other, points, report);
        }

        /** A number of its own (points below a million, lengths below 1,024), quicker than the record to look up. */
        long number() {
            long lie = 16L * surface.ordinal() + situation.ordinal();
            long aim = 32L * length + bearing;
            return SPREAD * (((shot << 8 | lie) << 15 | aim) << 21 | points << 1 | (report ? 1 : 0));
        }
    }

    Cloud cloud(Asked asked) {
        return kept(clouds, asked, this::make);
    }

    /** What was made of the same before, or made now. */
    private static <T> T kept(ConcurrentHashMap<Long, SoftReference<T>> all, Asked asked, Function<Asked, T> make) {
        long number = asked.number();
        SoftReference<T> reference = all.get(number);
        T known = reference == null ? null : reference.get();
        if (known == null) {
            known = make.apply(asked);
            all.put(number, new SoftReference<>(known));
        }
        return known;
    }

    /** Lets go of all clouds until somebody asks again. */
    void forget() {
        clouds.clear();
        drawn.clear();
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

    private Cloud make(Asked k) {
        AimedSwing swing = flown(k.shot, k.bearing);
        if (swing == null) {
            return Cloud.of(draws(k), ownSeed(k));
        }
        Asked anyBearing = k.toward(0);
        return Cloud.of(kept(drawn, anyBearing, a -> new Cloud.Drawn(draws(a), swing, ownSeed(a))), swing);
    }

    private StrikeDraws draws(Asked k) {
        LieEffect lie = strikes.lie(k.shot, k.surface, k.situation);
        return new StrikeDraws(strikes, k.shot, k.length * TOUCH_STEP_METRES, lie, k.points);
    }

    private long ownSeed(Asked k) {
        return seed * 0x9E3779B97F4A7C15L
                + (((k.shot * 31L + k.surface.ordinal()) * 31 + k.situation.ordinal()) * 1009 + k.length) * 2
                + (k.report ? 1 : 0);
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
