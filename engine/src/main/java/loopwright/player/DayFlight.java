package loopwright.player;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import loopwright.flight.DayChange;
import loopwright.flight.DayConditions;
import loopwright.flight.DayGround;
import loopwright.flight.LaunchGrid;
import loopwright.flight.LaunchStyle;
import loopwright.flight.ResponseSurface;
import loopwright.flight.SingleFlight;
import loopwright.flight.StrikeTable;
import loopwright.ground.Rise;
import loopwright.numerics.Watch;

/**
 * A bag in the day's air, wind and ground: for every swing a {@link ResponseSurface} of its solid and of its low
 * strikes, calibrated so that still standard air and ordinary ground give back the swing's own pattern.
 *
 * <p>Launches are {@link TypicalLaunch} unless a measured style is given, and vary in loft by its spread; the ball speed
 * always follows from the carry.
 * The run is the model's, brought to the player's own gap between carry and total: (run + b) = (model + b) (pattern's
 * run + b) / (model's usual run + b), b = 3 m, which keeps a wedge's run of nearly nothing
 * from dividing by nothing.
 */
public final class DayFlight {
    static final double RUN_OFFSET_METRES = DayChange.RUN_OFFSET_METRES;

    private final DayConditions day;
    private final DayGround ground;
    private final SingleFlight single;
    private final SingleFlight airAlone;
    private final SingleFlight airAndWind;
    private final Map<Swing, Surfaces> swings;
    /** What bearings are turned back by before anything is read. */
    private final double turn;

    /** Of one swing: its launches, what the day makes of them and what still standard air does, by grid and surface. */
    private record Surfaces(Response solid, Response low, double runFactor) {}

    private record Response(LaunchGrid launches, ResponseSurface day, StrikeTable usual) {}

    public DayFlight(List<Swing> swings, DayConditions day, Watch watch) {
        this(swings, day, Map.of(), watch);
    }

    /**
     * @param measured launch styles of swings whose launches were measured; others are typical
     */
    public DayFlight(List<Swing> swings, DayConditions day, Map<Swing, LaunchStyle> measured, Watch watch) {
        this.day = day;
        this.ground = DayGround.of(day);
        this.single = new SingleFlight(day);
        this.airAndWind = new SingleFlight(day.withOrdinaryGround());
        this.airAlone = new SingleFlight(day.withOrdinaryGround().withoutWind());
        this.swings = new HashMap<>();
        this.turn = 0;
        AtomicInteger done = new AtomicInteger();
        // each swing's surfaces depend on nothing but the swing, so any order of work gives the same bytes
        List<Surfaces> made = swings.parallelStream()
                .map(swing -> {
                    watch.check();
                    Surfaces surfaces = surfaces(swing, measured.getOrDefault(swing, TypicalLaunch.of(swing.club())));
                    watch.at(done.incrementAndGet(), swings.size());
                    return surfaces;
                })
                .toList();
        for (int i = 0; i < made.size(); i++) {
            this.swings.put(swings.get(i), made.get(i));
        }
    }

    private DayFlight(DayFlight usual, double turn) {
        this.day = usual.day;
        this.ground = usual.ground;
        this.single = usual.single;
        this.airAlone = usual.airAlone;
        this.airAndWind = usual.airAndWind;
        this.swings = usual.swings;
        this.turn = turn;
    }

    /** The same day with its wind turned clockwise, radians; nothing is flown anew. */
    public DayFlight turned(double radians) {
        return new DayFlight(this, turn + radians);
    }

    /** The day as it was flown, its wind not turned. */
    public DayConditions day() {
        return day;
    }

    /** The swing aimed on a bearing: reads single strikes. Costs a few microseconds; keep it for a whole cloud. */
    public AimedSwing toward(Swing swing, double bearingRadians) {
        Surfaces surfaces = surfaces(swing);
        return new AimedSwing(
                surfaces.solid.day.toward(bearingRadians - turn),
                surfaces.low.day.toward(bearingRadians - turn),
                surfaces.solid.usual,
                surfaces.low.usual,
                surfaces.runFactor);
    }

    /** Flies one strike by itself, down to the ground, and says what the day made of it. */
    void fly(
            Swing swing,
            Landing strike,
            double bearingRadians,
            double gustAlong,
            double gustAcross,
            Rise rise,
            DayChange out) {
        fly(single, swing, strike, bearingRadians, gustAlong, gustAcross, rise, out);
    }

    /** What each part of the day does to a strike in the mean wind: the parts are added one after the other. */
    PlayingLength playing(Swing swing, Landing strike, double bearingRadians, Rise rise) {
        Landing air = after(airAlone, swing, strike, bearingRadians, Rise.LEVEL);
        Landing wind = after(airAndWind, swing, strike, bearingRadians, Rise.LEVEL);
        Landing ground = after(single, swing, strike, bearingRadians, Rise.LEVEL);
        Landing height = after(single, swing, strike, bearingRadians, rise);
        return new PlayingLength(
                height.totalMetres(),
                wind.finishRadians() - air.finishRadians(),
                strike.totalMetres() - air.totalMetres(),
                air.totalMetres() - wind.totalMetres(),
                ground.totalMetres() - height.totalMetres(),
                wind.totalMetres() - ground.totalMetres());
    }

    private Landing after(SingleFlight part, Swing swing, Landing strike, double bearing, Rise rise) {
        DayChange change = new DayChange();
        fly(part, swing, strike, bearing, 0, 0, rise, change);
        Landing out = strike.copy();
        out.change(change);
        return out;
    }

    private void fly(
            SingleFlight part,
            Swing swing,
            Landing strike,
            double bearingRadians,
            double gustAlong,
            double gustAcross,
            Rise rise,
            DayChange out) {
        Surfaces surfaces = surfaces(swing);
        part.fly(
                (strike.low ? surfaces.low : surfaces.solid).launches,
                strike.carryMetres,
                strike.directionRadians,
                strike.loft,
                bearingRadians - turn,
                gustAlong,
                gustAcross,
                rise,
                out);
    }

    private Surfaces surfaces(Swing swing) {
        Surfaces surfaces = swings.get(swing);
        if (surfaces == null) {
            throw new IllegalArgumentException("no surface was made for " + swing.label());
        }
        return surfaces;
    }

    private Surfaces surfaces(Swing swing, LaunchStyle style) {
        double carry = swing.pattern().carryMetres();
        LaunchGrid solid = new LaunchGrid(style, TypicalLaunch.spread(swing.pattern()), carry);
        LaunchGrid low = new LaunchGrid(TypicalLaunch.low(swing.club()), carry);
        double usualRun = solid.usualRunMetres(DayGround.STANDARD);
        double factor = (swing.pattern().runMetres() + RUN_OFFSET_METRES) / (usualRun + RUN_OFFSET_METRES);
        return new Surfaces(response(solid), response(low), factor);
    }

    private Response response(LaunchGrid launches) {
        ResponseSurface usual = new ResponseSurface(launches, DayConditions.STANDARD, DayGround.STANDARD);
        boolean standard = day.equals(DayConditions.STANDARD);
        return new Response(launches, standard ? usual : new ResponseSurface(launches, day, ground), usual.toward(0));
    }
}
