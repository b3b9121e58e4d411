package loopwright.action;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import loopwright.course.CourseMap;
import loopwright.flight.DayConditions;
import loopwright.flight.Wind;
import loopwright.geo.Place;
import loopwright.ground.Rise;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.DayFlight;
import loopwright.player.PlayingLength;
import loopwright.player.SituationTable;
import loopwright.player.StrikeModel;
import loopwright.strategy.Ability;
import loopwright.strategy.Advice;
import org.jspecify.annotations.Nullable;

/**
 * Asks every hole, as it is solved, for what the book tells besides the plan, and has its rounds played out for what to
 * expect.
 *
 * <p>In wind only the tee shot is chosen anew; what follows is valued as on the plan's day. Of the plan's own club the
 * line that holds its drift against the wind is kept where another costs next to nothing less.
 */
final class BriefHoles implements PlanWitness {
    /** A wind in which flags stand out: 15 mph (assumed). */
    static final double WIND_METRES_PER_SECOND = 15 * 0.44704;

    /** A club that costs less than this in wind is not left for another: as the plan prefers the usual club. */
    private static final double PREFER_PLANNED = 0.05;

    private final Map<Integer, HoleBriefing> byHole = new ConcurrentHashMap<>();
    private final Map<Integer, HolePicture.StrokesField> strokes = new ConcurrentHashMap<>();
    private final Map<Integer, List<ExpectRound.Played>> played = new ConcurrentHashMap<>();
    private @Nullable RoundSetup setup;
    private @Nullable DayFlight windy;
    private @Nullable List<StrikeModel> days;

    @Override
    public void round(RoundSetup round) {
        setup = round;
        DayConditions day = round.day().conditions();
        DayConditions wind = new DayConditions(
                day.air(), Wind.steady(WIND_METRES_PER_SECOND, 0), day.firmness(), day.greenResistance());
        windy = new DayFlight(round.profile().player().swings(), wind, Watch.NONE);
        days = round.round().moreDays(round.profile().day(), ExpectRound.ROUNDS);
    }

    RoundSetup setup() {
        return Objects.requireNonNull(setup);
    }

    /** Strokes to hole out over a hole, for contours. */
    HolePicture.StrokesField strokes(int hole) {
        return Objects.requireNonNull(strokes.get(hole));
    }

    HoleBriefing of(int hole) {
        return Objects.requireNonNull(byHole.get(hole));
    }

    /** What to expect of the round, from the rounds that were played out. */
    Expectation expectation(int target) {
        return ExpectRound.expectation(
                setup(),
                target,
                ExpectRound.count(
                        setup().holes(),
                        setup().holes().stream()
                                .map(h -> Objects.requireNonNull(played.get(h.number())))
                                .toList()));
    }

    @Override
    public void hole(Solved solved, Watch watch) {
        byHole.put(solved.plan().number(), new OneHole(solved).brief());
        strokes.put(
                solved.plan().number(),
                StrokesGrid.of(solved.shots().map().hole(), solved.plan().tee(), solved.evaluation()));
        played.put(
                solved.plan().number(),
                ExpectRound.play(
                        solved.shots().map(),
                        solved.plan().tee(),
                        solved.solution().policy(solved.evaluation()),
                        solved.green(),
                        Objects.requireNonNull(days),
                        setup().round().seed()));
    }

    /** The questions to one hole. */
    private final class OneHole {
        private final Solved solved;
        private final CourseMap map;
        private final RoundPlan.ShotPlan tee;
        private final MissedSides missed;

        OneHole(Solved solved) {
            this.solved = solved;
            map = solved.shots().map();
            tee = solved.plan().shots().get(0);
            missed = new MissedSides(map, solved.evaluation());
        }

        HoleBriefing brief() {
            Map<String, Double> lost = lost();
            return new HoleBriefing(
                    lost.values().stream().mapToDouble(Double::doubleValue).sum(),
                    lost.entrySet().stream()
                            .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                            .map(Map.Entry::getKey)
                            .toList(),
                    missed.isMeantForTheGreen(tee) ? Optional.empty() : Optional.of(missed.beside(tee)),
                    winds());
        }

        /** Chance of a lost ball by where, most likely first; nothing that happens in under one of two hundred. */
        private Map<String, Double> lost() {
            Map<Surface, Double> by = new EnumMap<>(Surface.class);
            double share = 1.0 / tee.sample().size();
            for (Place p : tee.sample()) {
                Surface on = map.surfaceAt(p);
                double chance = on == Surface.OUT_OF_BOUNDS ? 1 : map.notFoundChanceAt(p.x(), p.y());
                if (chance > 0 && !on.isPenaltyArea()) {
                    by.merge(on, share * chance, Double::sum);
                }
            }
            Map<String, Double> out = new LinkedHashMap<>();
            by.entrySet().stream()
                    .filter(e -> e.getValue() >= 0.005)
                    .forEach(e -> out.put(Rooms.words(e.getKey()), e.getValue()));
            return out;
        }

        private List<HoleBriefing.WindChoice> winds() {
            List<HoleBriefing.WindChoice> out = new ArrayList<>();
            for (HoleBriefing.WindSide side : HoleBriefing.WindSide.values()) {
                out.add(inWind(side));
            }
            return out;
        }

        private HoleBriefing.WindChoice inWind(HoleBriefing.WindSide side) {
            double bearing = tee.from().bearingTo(tee.aim());
            DayFlight day = Objects.requireNonNull(windy).turned(side.fromBearing(bearing));
            StrikeModel strikes = new StrikeModel(setup().profile().player(), day);
            Ability ability = new Ability(
                    strikes,
                    setup().round().ordinary().putting(),
                    setup().round().seed());
            Advice advice = new Advice(solved.solution(), solved.evaluation(), ability);
            List<Advice.Rated> allowed = advice.byShot(tee.from(), Surface.TEE, onTee()).stream()
                    .filter(r -> solved.shots().mayBePlayedFromTee(r.shot()))
                    .toList();
            Advice.Rated taken = taken(advice, strikes, allowed);
            double turn = tee.from().bearingTo(taken.target()) - bearing;
            return new HoleBriefing.WindChoice(side, strikes.label(taken.shot()), tee.aimMetres() * Math.sin(turn));
        }

        /** The planned club on the line that holds against the wind, if that costs next to nothing; else the best. */
        private Advice.Rated taken(Advice advice, StrikeModel strikes, List<Advice.Rated> allowed) {
            Advice.Rated best = allowed.get(0);
            int planned = solved.shots().shotNamed(tee.club());
            Advice.Rated held = advice.rate(
                    tee.from(),
                    Surface.TEE,
                    onTee(),
                    planned,
                    tee.from().along(heldBearing(strikes, planned), tee.aimMetres()));
            if (held.costBeside(best) < PREFER_PLANNED) {
                return held;
            }
            return allowed.stream()
                    .filter(r -> r.shot() == planned && r.costBeside(best) < PREFER_PLANNED)
                    .findFirst()
                    .orElse(best);
        }

        private double heldBearing(StrikeModel strikes, int shot) {
            double bearing = tee.from().bearingTo(tee.aim());
            return bearing
                    - strikes.findPlayingLength(shot, strikes.lie(shot, Surface.TEE, onTee()), bearing, Rise.LEVEL)
                            .map(PlayingLength::driftRadians)
                            .orElse(0.0);
        }

        private Situation onTee() {
            return SituationTable.of(Surface.TEE).get(0).situation();
        }
    }
}
