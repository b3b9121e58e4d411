package loopwright.player;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.flight.DayChange;
import loopwright.flight.DayConditions;
import loopwright.ground.Rise;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import org.jspecify.annotations.Nullable;

/**
 * Turns random numbers into strikes: the one place where a player's patterns and the effect of the lie become a
 * landing. The solver feeds it well-spread numbers, the referee fresh random ones.
 *
 * <p>What the player can do is numbered: the full and partial swings first, in the player's order, then the touch
 * shots, whose length is chosen. A mishit of a swing that stays low runs on by {@link #LOW_RUN_SHARE} of the solid
 * carry. Runs vary by a log-normal factor of mean 1 (assumed).
 *
 * <p>Strikes are drawn as they are in still standard air on ordinary level ground; {@link #toward} and {@link #fly} say
 * what the day makes of them, the one from tables, the other exactly. Touch shots are judged by eye: the player sees
 * wind, height and ground and means his length for them (assumed).
 */
public final class StrikeModel {
    /** Run of a low mishit as a share of the solid carry: assumed. */
    private static final double LOW_RUN_SHARE = 0.12;
    /** Height of a low mishit as a share of the solid apex: assumed. */
    private static final double LOW_APEX_SHARE = 0.2;
    /** Standard deviation of the logarithm of the run: assumed. */
    private static final double RUN_LOG_SD = 0.35;
    /** The same of a touch shot, whose landing is chosen: assumed. */
    static final double TOUCH_RUN_LOG_SD = 0.3 * RUN_LOG_SD;
    /** The draw of a run that is just the mean. */
    private static final double MEAN_RUN = RUN_LOG_SD / 2;
    /** No lie makes more than this share of strikes mishits. */
    static final double MOST_MISHITS = 0.85;

    private final List<Swing> swings;
    private final List<TouchShot> touchShots;
    private final @Nullable DayFlight day;
    /** The swings that the day was flown for. */
    private final List<Swing> flown;

    /** The player in still standard air on ordinary, level ground. */
    public StrikeModel(Player player) {
        this(player, null);
    }

    /** The player on a day that was flown for his swings. */
    public StrikeModel(Player player, @Nullable DayFlight day) {
        this.day = day;
        swings = player.swings();
        flown = swings;
        List<TouchShot> touch = new ArrayList<>(player.touchShots());
        if (touch.stream().noneMatch(t -> t.kind() == TouchShot.Kind.PUNCH)) {
            touch.add(Punch.assumed(player));
        }
        AroundTheGreen.assumed(player).stream()
                .filter(more -> touch.stream().noneMatch(t -> t.kind() == more.kind()))
                .forEach(touch::add);
        touchShots = List.copyOf(touch);
    }

    private StrikeModel(StrikeModel usual, RoundDay round) {
        day = usual.day;
        flown = usual.flown;
        swings = usual.swings.stream().map(s -> s.on(round)).toList();
        touchShots =
                usual.touchShots.stream().map(t -> t.withSpread(round.spread())).toList();
    }

    private StrikeModel(StrikeModel usual, Player other) {
        day = usual.day;
        flown = usual.flown;
        swings = other.swings();
        touchShots = new StrikeModel(other).touchShots;
        if (swings.size() != flown.size()) {
            throw new IllegalArgumentException(
                    "the same bag is needed: " + flown.size() + " swings, not " + swings.size());
        }
    }

    /**
     * Another player with the same swings in the same order, in the same weather: what the day does to a strike is taken
     * from this player's flights, which holds as long as lengths differ by no more than strikes do.
     */
    public StrikeModel of(Player other) {
        return new StrikeModel(this, other);
    }

    /** The player on a round's good or bad day, in the same weather; putting and the rates of mishits stay. */
    public StrikeModel on(RoundDay round) {
        return new StrikeModel(this, round);
    }

    /** How many different shots the player has, swings and touch shots together. */
    public int shots() {
        return swings.size() + touchShots.size();
    }

    public boolean isTouch(int shot) {
        return shot >= swings.size();
    }

    public Swing swing(int shot) {
        return swings.get(shot);
    }

    public TouchShot touch(int shot) {
        return touchShots.get(shot - swings.size());
    }

    /** "7-iron", "56-wedge half", "chip". */
    public String label(int shot) {
        return isTouch(shot)
                ? touch(shot).kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ')
                : swing(shot).label();
    }

    /** Mean total length of a swing from a good lie; the longest intended length of a touch shot. */
    public double lengthMetres(int shot) {
        return isTouch(shot) ? touch(shot).maxMetres() : swing(shot).pattern().totalMetres();
    }

    /** True if the shot can be played from the lie at all; a driver is for the tee (common practice, no source). */
    public boolean allows(int shot, Surface surface, Situation situation) {
        if (isTouch(shot)) {
            return switch (touch(shot).kind()) {
                case BUNKER_SHOT -> surface == Surface.BUNKER;
                case PUNCH -> surface == Surface.WOODS;
                case FRINGE_PUTT -> surface == Surface.FAIRWAY;
                case LOB -> surface == Surface.FAIRWAY || surface == Surface.ROUGH || surface == Surface.DEEP_ROUGH;
                case CHIP, PITCH ->
                    surface != Surface.BUNKER && surface != Surface.TEE && situation != Situation.SIDEWAYS_ONLY;
            };
        }
        if (swing(shot).club().family() == Club.Family.DRIVER && surface != Surface.TEE) {
            return false;
        }
        return situation != Situation.SIDEWAYS_ONLY && situation != Situation.PLUGGED && situation != Situation.WINDOW;
    }

    /** Effect of the lie on the shot. */
    public LieEffect lie(int shot, Surface surface, Situation situation) {
        return isTouch(shot)
                ? LieTable.onTouchShot(surface, situation)
                : LieTable.onSwing(surface, situation, swing(shot).pattern().carryMetres());
    }

    /** The shot as the day flies it for an aim, from tables; null where the day changes nothing. */
    public @Nullable AimedSwing toward(int shot, double bearingRadians) {
        return day == null || isTouch(shot) ? null : day.toward(flown.get(shot), bearingRadians);
    }

    /** True if what the day does depends on the bearing of the aim. */
    public boolean isWindy() {
        return day != null && !day.day().wind().isStill();
    }

    /** True if every strike takes a draw for its {@link Landing#loft}: on any day but the standard one. */
    public boolean variesInLoft() {
        return day != null && !day.day().equals(DayConditions.STANDARD);
    }

    /** True if every strike takes two draws for its gust. */
    public boolean isGusty() {
        return day != null && day.day().wind().isGusty();
    }

    /**
     * Flies a strike exactly through the day, down to the ground: the referee's way. Where no day was flown, it is moved
     * along its descent. Gusts are standard normal draws.
     */
    public void fly(int shot, double bearingRadians, double gustAlong, double gustAcross, Rise rise, Landing strike) {
        if (isTouch(shot)) {
            return;
        }
        if (day == null) {
            strike.shift(rise);
        } else {
            DayChange change = new DayChange();
            day.fly(flown.get(shot), strike, bearingRadians, gustAlong, gustAcross, rise, change);
            strike.change(change);
        }
    }

    /** What the day makes of the usual solid strike of a swing; empty for touch shots and where no day was flown. */
    public Optional<PlayingLength> findPlayingLength(int shot, LieEffect lie, double bearingRadians, Rise rise) {
        if (day == null || isTouch(shot)) {
            return Optional.empty();
        }
        Landing usual = new Landing();
        solid(shot, 0, lie, 0, 0, MEAN_RUN, usual);
        return Optional.of(day.playing(flown.get(shot), usual, bearingRadians, rise));
    }

    /** Ways in which a shot can go wrong, with the rates of a good lie. */
    public List<Mishit> mishits(int shot) {
        return isTouch(shot) ? touch(shot).mishits() : swing(shot).pattern().mishits();
    }

    /** Rate of the mishit with this index, in the lie. */
    public double mishitRate(int shot, int mishit, LieEffect lie) {
        List<Mishit> all = mishits(shot);
        double sum = all.stream().mapToDouble(Mishit::rate).sum() * lie.mishits();
        double cap = sum > MOST_MISHITS ? MOST_MISHITS / sum : 1;
        return all.get(mishit).rate() * lie.mishits() * cap;
    }

    /**
     * One strike.
     *
     * @param intendedMetres total length meant, for touch shots; ignored for swings
     * @param mode uniform in [0, 1), selects solid or the kind of mishit
     * @param z1 standard normal: length
     * @param z2 standard normal: direction
     * @param z3 standard normal: run
     */
    public void strike(
            int shot, double intendedMetres, LieEffect lie, double mode, double z1, double z2, double z3, Landing out) {
        int count = mishits(shot).size();
        double left = mode;
        for (int m = 0; m < count; m++) {
            left -= mishitRate(shot, m, lie);
            if (left < 0) {
                mishit(shot, m, intendedMetres, lie, z1, z2, z3, out);
                return;
            }
        }
        solid(shot, intendedMetres, lie, z1, z2, z3, out);
    }

    /** A solid strike; arguments as {@link #strike}. */
    public void solid(int shot, double intendedMetres, LieEffect lie, double z1, double z2, double z3, Landing out) {
        if (isTouch(shot)) {
            TouchShot t = touch(shot);
            double meant = t.possibleMetres(intendedMetres);
            double total = meant + t.distanceSdMetres(meant) * lie.distanceSpread() * z1;
            touchLanding(t, total, t.directionSdRadians() * lie.directionSpread() * z2, lie, z3, out);
            return;
        }
        ShotPattern p = swing(shot).pattern();
        double carry = lie.carry() * (p.carryMetres() + p.carrySdMetres() * lie.distanceSpread() * z1);
        double mixed = p.correlation() * z1 + Math.sqrt(1 - p.correlation() * p.correlation()) * z2;
        double direction = p.directionRadians() + p.directionSdRadians() * lie.directionSpread() * mixed;
        double share = Math.max(0, carry / p.carryMetres());
        double run = p.runMetres() * lie.run() * share * runFactor(z3);
        out.strike(carry, direction, false, run, p.apexMetres() * share, p.descentRadians());
    }

    /** A strike that goes wrong in one way; arguments as {@link #strike}. */
    public void mishit(
            int shot, int index, double intendedMetres, LieEffect lie, double z1, double z2, double z3, Landing out) {
        Mishit m = mishits(shot).get(index);
        double share = Math.max(0, m.carryFactor() + m.carryFactorSd() * z1);
        double turn = m.directionRadians() + m.directionSdRadians() * z2;
        if (isTouch(shot)) {
            touchLanding(touch(shot), touch(shot).possibleMetres(intendedMetres) * share, turn, lie, z3, out);
            return;
        }
        ShotPattern p = swing(shot).pattern();
        double carry = lie.carry() * p.carryMetres() * share;
        double run = m.low() ? LOW_RUN_SHARE * p.carryMetres() : p.runMetres() * lie.run() * Math.min(1, share);
        double apex = p.apexMetres() * Math.min(1, share) * (m.low() ? LOW_APEX_SHARE : 1);
        out.strike(carry, p.directionRadians() + turn, m.low(), run * runFactor(z3), apex, p.descentRadians());
    }

    private static void touchLanding(
            TouchShot t, double totalMetres, double direction, LieEffect lie, double z3, Landing out) {
        double total = Math.max(0, totalMetres);
        double run = total * t.runShare();
        double carry = total - run;
        double apex = apexOf(t.kind()) * carry;
        out.strike(carry, direction, false, run * lie.run() * runFactor(0.3 * z3), apex, 0);
    }

    /** Height of a touch shot as a share of its carry: assumed. */
    private static double apexOf(TouchShot.Kind kind) {
        return switch (kind) {
            case CHIP -> 0.1;
            case PITCH -> 0.25;
            case BUNKER_SHOT -> 0.3;
            case PUNCH -> 0.015;
            case FRINGE_PUTT -> 0;
            case LOB -> 0.5;
        };
    }

    private static double runFactor(double z) {
        return Math.exp(RUN_LOG_SD * z - RUN_LOG_SD * RUN_LOG_SD / 2);
    }
}
