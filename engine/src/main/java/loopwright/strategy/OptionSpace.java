package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.StrikeModel;
import loopwright.player.TouchShot;
import loopwright.rules.Relief;

/**
 * The options of a spot: every shot the lie allows, aimed in a fan round the way to the hole and along the hole; touch
 * shots also in length; unplayable drops from bad spots. Shots that would fly far past the hole, or fall far short
 * where longer ones exist, are left out.
 */
final class OptionSpace {
    /** Instead of a distance between aims: swings straight at the hole and along it alone. */
    static final double AHEAD_ONLY = Double.POSITIVE_INFINITY;

    private static final double PAST_CELLS = 35;
    private static final double SHORTEST_SHARE = 0.45;
    private static final double FAN = Math.toRadians(25);
    private static final double WOODS_FAN = Math.toRadians(60);
    /** Reach beyond a touch shot's longest length from which it is still looked at. */
    private static final double TOUCH_REACH_CELLS = 16;

    private static final double[] SIDE_CELLS = {0, -2, 2, -4, 4, -8, 8};
    /** Where aims are wider apart than this, touch shots are too. */
    private static final double FINE_STEP_CELLS = 10;

    private static final double[] ROUGH_SIDE_CELLS = {0, -4, 4};
    private static final int ESCAPES = 16;
    private static final int PUNCH_BEARINGS = 24;
    private static final double[] PUNCH_METRES = {20, 35, 55, 80, 110, 150};
    /** One step of aim in {@link #beside}, cells at the end of a swing. */
    private static final double AIM_STEP_CELLS = 3;

    private final HoleProblem problem;
    private final StrikeModel strikes;
    private final double holeColumn;
    private final double holeRow;
    private final double longestCells;

    OptionSpace(HoleProblem problem) {
        this.problem = problem;
        strikes = problem.ability.strikes();
        holeColumn = problem.raster.column(problem.hole());
        holeRow = problem.raster.row(problem.hole());
        double longest = 0;
        for (int s = 0; s < strikes.shots(); s++) {
            longest = Math.max(longest, strikes.lengthMetres(s) / HoleRaster.CELL_METRES);
        }
        longestCells = longest;
    }

    private double lengthCells(int shot, double bearing) {
        return problem.ability.reach().metres(shot, bearing) / HoleRaster.CELL_METRES;
    }

    /** True if the lie and the coach let the shot be played. */
    private boolean allows(int shot, Spot spot) {
        return strikes.allows(shot, spot.surface(), spot.situation()) && problem.rules.allows(shot, spot.onTee());
    }

    /** All options of a spot with aims {@code stepCells} apart at the end of the shot. */
    List<Option> all(Spot spot, double stepCells) {
        List<Option> out = new ArrayList<>();
        for (int shot = 0; shot < strikes.shots(); shot++) {
            if (!allows(shot, spot)) {
                continue;
            }
            if (!strikes.isTouch(shot)) {
                addSwing(out, shot, spot, stepCells);
            } else if (isPunch(shot)) {
                addEscapes(out, shot, spot, PUNCH_METRES, PUNCH_BEARINGS);
            } else {
                addTouch(out, shot, spot, stepCells);
            }
        }
        if (out.isEmpty()) {
            // The coach has locked away everything that could be played from here: let the lie alone decide.
            for (int shot = 0; shot < strikes.shots() && !strikes.isTouch(shot); shot++) {
                if (strikes.allows(shot, spot.surface(), spot.situation())) {
                    addSwing(out, shot, spot, stepCells);
                }
            }
        }
        addDrops(out, spot);
        return out;
    }

    /** A swing from a spot in all directions of the fan, aims {@code stepCells} apart at its end. */
    List<Option> fan(int shot, Spot spot, double stepCells) {
        List<Option> out = new ArrayList<>();
        addSwing(out, shot, spot, stepCells);
        return out;
    }

    private void addSwing(List<Option> out, int shot, Spot spot, double stepCells) {
        double direct = Math.atan2(holeColumn - spot.column(), holeRow - spot.row());
        double length = lengthCells(shot, direct);
        double toHole = Math.hypot(holeColumn - spot.column(), holeRow - spot.row());
        boolean tooShort = length < SHORTEST_SHARE * Math.min(toHole, longestCells);
        if (length > toHole + PAST_CELLS || (tooShort && problem.rules.fromTee().isEmpty())) {
            return;
        }
        double along = alongTheHole(spot, length, direct);
        double fan = spot.surface() == Surface.WOODS ? WOODS_FAN : FAN;
        double low = Math.min(direct, along) - fan;
        double high = Math.max(direct, along) + fan;
        double step = stepCells / length;
        for (double bearing = low; bearing <= high && stepCells < AHEAD_ONLY; bearing += step) {
            out.add(swing(shot, spot, bearing));
        }
        out.add(swing(shot, spot, held(shot, direct)));
        out.add(swing(shot, spot, held(shot, along)));
    }

    /** Where to aim so that the wind brings the ball to a bearing. */
    double held(int shot, double bearing) {
        return bearing - problem.ability.reach().driftRadians(shot, bearing);
    }

    /** A swing in a direction; its target is where the shot would finish. */
    Option swing(int shot, Spot spot, double bearing) {
        double length = lengthCells(shot, bearing);
        return Option.stroke(shot, spot.column() + length * Math.sin(bearing), spot.row() + length * Math.cos(bearing));
    }

    /** Bearing to the place on the line of play that the shot would reach, within half a turn of {@code near}. */
    private double alongTheHole(Spot spot, double lengthCells, double near) {
        Place here = problem.raster.place(spot.column(), spot.row());
        Place ahead = problem.line.placeAt(problem.line.along(here) + lengthCells * HoleRaster.CELL_METRES);
        double bearing = here.distanceTo(ahead) < 1 ? near : here.bearingTo(ahead);
        double turn = bearing - near;
        return near + turn - 2 * Math.PI * Math.rint(turn / (2 * Math.PI));
    }

    private void addTouch(List<Option> out, int shot, Spot spot, double stepCells) {
        boolean roughly = stepCells > FINE_STEP_CELLS;
        TouchShot t = strikes.touch(shot);
        double toHole = Math.hypot(holeColumn - spot.column(), holeRow - spot.row());
        double most = t.maxMetres() / HoleRaster.CELL_METRES;
        double least = t.minMetres() / HoleRaster.CELL_METRES;
        boolean atTheHole = t.kind() == TouchShot.Kind.FRINGE_PUTT || t.kind() == TouchShot.Kind.LOB;
        if (toHole <= most + (atTheHole ? 0 : TOUCH_REACH_CELLS)) {
            double east = (holeColumn - spot.column()) / Math.max(1e-9, toHole);
            double north = (holeRow - spot.row()) / Math.max(1e-9, toHole);
            for (double wanted = toHole - 12; wanted <= toHole + 8; wanted += roughly ? 4 : 2) {
                double length = Math.max(least, Math.min(most, wanted));
                for (double side : roughly ? ROUGH_SIDE_CELLS : SIDE_CELLS) {
                    out.add(touchAt(
                            shot,
                            spot,
                            spot.column() + length * east + side * north,
                            spot.row() + length * north - side * east));
                }
            }
        }
        boolean bad = spot.surface() == Surface.BUNKER
                || spot.surface() == Surface.WOODS
                || spot.surface() == Surface.DEEP_ROUGH;
        if (bad && !atTheHole) {
            addEscapes(out, shot, spot, new double[] {t.maxMetres(), 0.6 * t.maxMetres()}, ESCAPES);
        }
    }

    private boolean isPunch(int shot) {
        return strikes.isTouch(shot) && strikes.touch(shot).kind() == TouchShot.Kind.PUNCH;
    }

    private void addEscapes(List<Option> out, int shot, Spot spot, double[] metres, int bearings) {
        for (double m : metres) {
            if (m <= strikes.touch(shot).maxMetres()) {
                double length = m / HoleRaster.CELL_METRES;
                for (int b = 0; b < bearings; b++) {
                    double bearing = 2 * Math.PI * b / bearings;
                    out.add(touch(shot, spot, length, bearing));
                }
            }
        }
    }

    /** A touch shot towards a place, of the nearest length for which there is a cloud. */
    private Option touchAt(int shot, Spot spot, double column, double row) {
        double east = column - spot.column();
        double north = row - spot.row();
        return touch(shot, spot, Math.hypot(east, north), Math.atan2(east, north));
    }

    private Option touch(int shot, Spot spot, double lengthCells, double bearing) {
        double length = problem.ability.clouds().touchMetres(shot, lengthCells * HoleRaster.CELL_METRES)
                / HoleRaster.CELL_METRES;
        return Option.stroke(shot, spot.column() + length * Math.sin(bearing), spot.row() + length * Math.cos(bearing));
    }

    private void addDrops(List<Option> out, Spot spot) {
        boolean bad = spot.situation() == Situation.SIDEWAYS_ONLY
                || spot.situation() == Situation.PLUGGED
                || spot.trees().hasFace()
                || (spot.surface() == Surface.DEEP_ROUGH && spot.situation() == Situation.DOWN);
        if (!bad) {
            return;
        }
        Place ball = problem.raster.place(spot.column(), spot.row());
        for (Relief.Option o : Relief.unplayable(problem.map, ball, spot.surface())) {
            if (!problem.raster.isDrop(o.place())) {
                continue;
            }
            out.add(new Option(
                    Option.DROP, problem.raster.column(o.place()), problem.raster.row(o.place()), o.penaltyStrokes()));
        }
    }

    /** Options one step from a given one: aim, length and, if wanted, the next clubs. */
    List<Option> beside(Option o, Spot spot, boolean clubs) {
        List<Option> out = new ArrayList<>();
        if (o.isDrop()) {
            return out;
        }
        double bearing = Math.atan2(o.column() - spot.column(), o.row() - spot.row());
        if (strikes.isTouch(o.shot())) {
            double length = Math.hypot(o.column() - spot.column(), o.row() - spot.row());
            double side = Math.min(0.3, 1 / Math.max(1, length));
            out.add(touch(o.shot(), spot, length + 1, bearing));
            out.add(touch(o.shot(), spot, Math.max(1, length - 1), bearing));
            out.add(touch(o.shot(), spot, length, bearing + side));
            out.add(touch(o.shot(), spot, length, bearing - side));
            return out;
        }
        double side = AIM_STEP_CELLS / lengthCells(o.shot(), bearing);
        out.add(swing(o.shot(), spot, bearing + side));
        out.add(swing(o.shot(), spot, bearing - side));
        for (int other = o.shot() - 1; clubs && other <= o.shot() + 1; other += 2) {
            if (other >= 0 && !strikes.isTouch(other) && allows(other, spot)) {
                out.add(swing(other, spot, bearing));
            }
        }
        return out;
    }

    /** The same idea from another spot: a touch shot to the same place, a swing at the same target; or none. */
    Optional<Option> from(Option o, Spot spot) {
        if (o.isDrop() || !allows(o.shot(), spot)) {
            return Optional.empty();
        }
        return Optional.of(
                strikes.isTouch(o.shot())
                        ? touchAt(o.shot(), spot, o.column(), o.row())
                        : swing(o.shot(), spot, Math.atan2(o.column() - spot.column(), o.row() - spot.row())));
    }
}
