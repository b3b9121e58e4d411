package loopwright.strategy;

import loopwright.course.BunkerFace;
import loopwright.course.CourseMap;
import loopwright.geo.Box;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.FlightShape;
import loopwright.putting.GreenOdds;
import org.jspecify.annotations.Nullable;

/**
 * The outcome model of one hole for one player on one day: what can happen from any spot with any shot and aim. All
 * solving, evaluating and attributing works on this one object. Immutable but for caches that never change an answer.
 */
public final class HoleProblem {
    /** Ground kept round the line of play, metres. */
    private static final double MARGIN_METRES = 80;

    final CourseMap map;
    final Line line;
    final Ability ability;
    final SolverSettings settings;
    final ShotRules rules;
    final HoleRaster raster;
    final ReliefField relief;
    final GroundRun ground;
    final GreenOdds green;
    /** Where the course has heights; else it is level. */
    final @Nullable GroundHeights heights;

    /** A hole whose green nobody measured: no break is claimed on it. */
    public HoleProblem(CourseMap map, Place tee, Ability ability, SolverSettings settings, ShotRules rules) {
        this(map, tee, ability, settings, rules, level(map, ability));
    }

    private static GreenOdds level(CourseMap map, Ability ability) {
        Place hole = map.hole().holeLocation();
        return GreenOdds.level(ability.putting(), hole.x(), hole.y());
    }

    /** A hole with the odds of its own green. */
    public HoleProblem(
            CourseMap map, Place tee, Ability ability, SolverSettings settings, ShotRules rules, GreenOdds green) {
        this.green = green;
        this.map = map;
        this.line = map.hole().lineFrom(tee);
        this.ability = ability;
        this.settings = settings;
        this.rules = rules;
        Box extent = Box.around(line.places()).union(map.hole().green().box()).grown(MARGIN_METRES);
        raster = new HoleRaster(map, extent);
        relief = new ReliefField(map, raster);
        heights = map.course().heights().map(h -> new GroundHeights(raster, h)).orElse(null);
        ground = new GroundRun(raster, relief, heights);
    }

    private HoleProblem(HoleProblem same, Ability ability) {
        map = same.map;
        line = same.line;
        boolean usual = same.green instanceof GreenOdds.Level level && level.odds() == same.ability.putting();
        green = usual ? level(map, ability) : same.green;
        this.ability = ability;
        settings = same.settings;
        rules = same.rules;
        raster = same.raster;
        relief = same.relief;
        ground = same.ground;
        heights = same.heights;
    }

    /** The same hole on the same ground for another ability; a green with odds of its own keeps them. */
    HoleProblem with(Ability other) {
        return new HoleProblem(this, other);
    }

    public CourseMap map() {
        return map;
    }

    public Ability ability() {
        return ability;
    }

    public SolverSettings settings() {
        return settings;
    }

    public Place tee() {
        return line.start();
    }

    public Place hole() {
        return line.end();
    }

    /** The line of play from the tee to the hole location. */
    public Line line() {
        return line;
    }

    /** Trees, and the face of a bunker, as seen from a spot in a situation. */
    TreeFan treesFrom(double column, double row, Surface surface, Situation situation) {
        double open = surface == Surface.WOODS ? FlightShape.openMetres(situation) : 0;
        BunkerFace face = surface == Surface.BUNKER
                ? BunkerFace.find(map, raster.place(column, row)).orElse(null)
                : null;
        return new TreeFan(raster, column, row, open, face);
    }

    ValueField values(NodeSet nodes) {
        return new ValueField(nodes, relief, hole(), green);
    }
}
