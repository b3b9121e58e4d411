package loopwright.scoring;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;
import loopwright.course.BunkerFace;
import loopwright.course.CourseMap;
import loopwright.course.LocalRule;
import loopwright.course.TreeCover;
import loopwright.geo.Place;
import loopwright.ground.HeightField;
import loopwright.ground.Rise;
import loopwright.ground.RunResistance;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.FlightShape;
import loopwright.player.Landing;
import loopwright.player.SituationTable;
import loopwright.player.StrikeModel;
import loopwright.putting.ChipIn;
import loopwright.rules.FairwayDrop;
import loopwright.rules.Relief;
import loopwright.strategy.Choice;
import loopwright.strategy.Policy;
import org.jspecify.annotations.Nullable;

/**
 * The referee: plays one hole stroke by stroke with continuous positions, exact polygons and fresh random draws, and
 * applies Rules 17 to 19 as written. It knows the course, the player and the Rules, and asks the policy for choices;
 * it shares no raster, no cloud and no snapping with the solver.
 *
 * <p>A ball out of bounds or lost is replayed from the spot and the lie of the stroke (Rule 18.2), or dropped by the
 * fairway where Model Local Rule E-5 is in force. There, in a penalty area and where declared unplayable the policy's own
 * values choose between the reliefs the Rules allow.
 */
public final class PlayOut {
    /** Nobody takes this many strokes; reaching it means that a policy never advances, which is our fault. */
    private static final int RUNAWAY = 200;

    private static final double STEP_METRES = 0.25;
    private static final double TREE_STEP_METRES = 1;

    private final CourseMap map;
    private final Place tee;
    private final StrikeModel strikes;
    private final GreenPlay green;
    private final Policy policy;
    private final Optional<FairwayDrop> fairwayDrop;
    private final boolean preferredLies;
    /** Of the course, where it has them; else it is level. */
    private final @Nullable HeightField heights;

    public PlayOut(CourseMap map, Place tee, StrikeModel strikes, GreenPlay green, Policy policy) {
        this.map = map;
        this.tee = tee;
        this.strikes = strikes;
        this.green = green;
        this.policy = policy;
        fairwayDrop = FairwayDrop.find(map);
        preferredLies = map.hasLocalRule(LocalRule.PREFERRED_LIES);
        this.heights = map.course().heights().orElse(null);
    }

    /** The result of one hole: all strokes, those of them that are penalties, and putts. */
    public record HoleScore(int strokes, int penaltyStrokes, int putts) {}

    /** Plays the hole from the tee. */
    public HoleScore play(RandomGenerator random) {
        return playFrom(tee, Surface.TEE, Situation.ORDINARY, random);
    }

    /** Plays from a ball at rest, off or on the green. */
    public HoleScore playFrom(Place place, Surface surface, Situation situation, RandomGenerator random) {
        return new Ball(random).playOut(place, surface, situation, null);
    }

    /** Plays one given stroke from a ball at rest and then the policy. */
    public HoleScore playFirst(
            Choice.Stroke first, Place place, Surface surface, Situation situation, RandomGenerator random) {
        return new Ball(random).playOut(place, surface, situation, first);
    }

    /** One ball on its way from tee to hole. */
    private final class Ball {
        private final RandomGenerator random;
        private final Landing landing = new Landing();
        private Place place = tee;
        private Surface surface = Surface.TEE;
        private Situation situation = Situation.ORDINARY;
        private int strokes;
        private int penalties;
        private boolean holed;

        Ball(RandomGenerator random) {
            this.random = random;
        }

        HoleScore playOut(Place from, Surface on, Situation in, Choice.@Nullable Stroke first) {
            place = from;
            surface = on;
            situation = in;
            if (first != null) {
                stroke(first);
            }
            while (!holed && surface != Surface.GREEN) {
                if (strokes > RUNAWAY) {
                    throw new IllegalStateException(
                            "hole " + map.hole().number() + " does not end from " + place + " on " + surface);
                }
                Choice choice = policy.afterStrokes(strokes).choose(place, surface, situation);
                if (choice instanceof Choice.Stroke s) {
                    stroke(s);
                } else if (choice instanceof Choice.Unplayable u) {
                    drop(u.drop());
                }
            }
            int putts = holed ? 0 : green.putts(place, map.hole().holeLocation(), strokes, random);
            return new HoleScore(strokes + putts, penalties, putts);
        }

        private void stroke(Choice.Stroke s) {
            strokes++;
            double bearing = place.bearingTo(s.target());
            strikes.strike(
                    s.shot(),
                    place.distanceTo(s.target()),
                    strikes.lie(s.shot(), surface, situation),
                    random.nextDouble(),
                    random.nextGaussian(),
                    random.nextGaussian(),
                    random.nextGaussian(),
                    landing);
            Place from = place;
            if (strikes.variesInLoft()) {
                landing.loft = random.nextGaussian();
            }
            if (strikes.isGusty()) {
                strikes.fly(
                        s.shot(), bearing, random.nextGaussian(), random.nextGaussian(), rise(from, bearing), landing);
            } else {
                strikes.fly(s.shot(), bearing, 0, 0, rise(from, bearing), landing);
            }
            fly(from, bearing, from.offset(bearing, landing.forwardMetres, landing.rightMetres));
        }

        private Rise rise(Place from, double bearing) {
            return heights == null
                    ? Rise.LEVEL
                    : (forward, right) -> heights.riseMetres(from, from.offset(bearing, forward, right));
        }

        private void fly(Place from, double aim, Place down) {
            double carry = from.distanceTo(down);
            double line = carry > 0 ? from.bearingTo(down) : aim;
            double stopped = fallsBack(from, line, carry) ? 0 : firstTree(from, line, carry);
            if (stopped < carry) {
                come(from, line, from.along(line, stopped), 0);
            } else {
                boolean onGreen = map.surfaceAt(down) == Surface.GREEN;
                double run = onGreen ? landing.greenRunMetres : landing.runMetres;
                come(from, aim + landing.headingRadians, down, run);
            }
        }

        /** True if the face of the bunker it lies in stops the ball, which then rolls back to where it lay. */
        private boolean fallsBack(Place from, double line, double carry) {
            if (surface != Surface.BUNKER) {
                return false;
            }
            Optional<BunkerFace> face = BunkerFace.find(map, from);
            return face.isPresent()
                    && !FlightShape.clears(
                            landing.apexMetres,
                            carry,
                            random.nextGaussian(),
                            face.get().distanceMetres(line),
                            face.get().heightMetres(line));
        }

        /** How far the ball gets before a tree stops it; the whole carry if none does. */
        private double firstTree(Place from, double line, double carry) {
            double open = surface == Surface.WOODS ? FlightShape.openMetres(situation) : 0;
            double patience = -Math.log(1 - random.nextDouble());
            for (double s = open + TREE_STEP_METRES / 2; s < carry; s += TREE_STEP_METRES) {
                TreeCover trees = map.findTreesAt(from.x() + Math.sin(line) * s, from.y() + Math.cos(line) * s);
                if (trees != null) {
                    double height = FlightShape.heightMetres(landing.apexMetres, s / carry);
                    patience -= trees.stopsPerMetre(height) * TREE_STEP_METRES;
                    if (patience < 0) {
                        return s;
                    }
                }
            }
            return carry;
        }

        /** Lands, runs and comes to rest, or into trouble. */
        private void come(Place from, double line, Place ground, double run) {
            Place at = ground;
            Surface here = map.surfaceAt(at);
            double left = run;
            double gone = 0;
            while (left > 0 && gone < RunResistance.LONGEST_RUN_METRES && !here.isPenaltyArea()) {
                Place ahead = at.along(line, STEP_METRES);
                double climb = heights == null ? 0 : heights.riseMetres(at, ahead);
                double cost = RunResistance.of(here) * STEP_METRES + climb / RunResistance.CLIMB;
                at = cost > left ? at.along(line, STEP_METRES * left / cost) : ahead;
                here = map.surfaceAt(at);
                left -= cost;
                gone += STEP_METRES;
            }
            if (here == Surface.OUT_OF_BOUNDS) {
                relieve(from, instead(lastCrossing(at, line, s -> s == Surface.OUT_OF_BOUNDS)));
            } else if (lost(at)) {
                relieve(from, instead(at));
            } else if (here.isPenaltyArea()) {
                Place crossing = lastCrossing(at, line, Surface::isPenaltyArea);
                relieve(from, Relief.fromPenaltyArea(map, crossing, here));
            } else {
                rest(at, here);
            }
        }

        private boolean lost(Place at) {
            double chance = map.notFoundChanceAt(at.x(), at.y());
            return chance > 0 && random.nextDouble() < chance;
        }

        /** What a local rule allows instead of a replay, from where the ball was lost or went out of bounds. */
        private List<Relief.Option> instead(Place reference) {
            return fairwayDrop.map(d -> d.from(reference)).orElse(List.of());
        }

        /** Goes back along the line until the trouble is left: where the ball last crossed its edge. */
        private Place lastCrossing(Place at, double line, Predicate<Surface> trouble) {
            Place back = at;
            while (trouble.test(map.surfaceAt(back))) {
                back = back.along(line, -STEP_METRES);
            }
            return back;
        }

        /** Takes the best of the reliefs, or stroke and distance (Rules 14.6, 18.2) where that is better. */
        private void relieve(Place from, List<Relief.Option> options) {
            Policy now = policy.afterStrokes(strokes);
            double best = now.costOfReplay(from, surface, situation);
            Relief.Option taken = null;
            for (Relief.Option o : options) {
                double cost = now.costOfDrop(o, map.surfaceAt(o.place()));
                if (cost < best) {
                    best = cost;
                    taken = o;
                }
            }
            if (taken == null) {
                penalties++;
                strokes++;
            } else {
                drop(taken);
            }
        }

        private void drop(Relief.Option option) {
            strokes += option.penaltyStrokes();
            penalties += option.penaltyStrokes();
            rest(option.place(), map.surfaceAt(option.place()));
        }

        private void rest(Place at, Surface on) {
            place = at;
            surface = on;
            situation = draw(SituationTable.of(on, preferredLies));
            holed = at.distanceTo(map.hole().holeLocation()) <= ChipIn.RADIUS_METRES;
        }

        private Situation draw(List<SituationTable.Chance> chances) {
            double left = random.nextDouble();
            for (SituationTable.Chance c : chances) {
                left -= c.probability();
                if (left < 0) {
                    return c.situation();
                }
            }
            return chances.get(chances.size() - 1).situation();
        }
    }
}
