package loopwright.strategy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;

/**
 * What can be done from one spot of a solved hole, and what each choice costs. Options are searched on the clouds for
 * choosing; everything reported comes from independent ones, followed by the evaluated policy.
 */
public final class Advice {
    private static final double AIM_CELLS = 5;
    private static final int SEARCH_POINTS = 256;
    private static final int CLIMB_STEPS = 6;
    private static final int REPORT_FACTOR = 4;
    private static final int SAMPLE = 400;

    private final MeanSolution solution;
    private final PolicyEvaluation evaluation;
    private final HoleProblem problem;
    private final OptionSpace space;
    private final Evaluator evaluator;

    public Advice(MeanSolution solution, PolicyEvaluation evaluation) {
        this(solution, evaluation, solution.problem);
    }

    /** Advice on the same policy's values for the player as he may be as well. */
    public Advice(MeanSolution solution, PolicyEvaluation evaluation, Ability other) {
        this(solution, evaluation, solution.problem.with(other));
    }

    private Advice(MeanSolution solution, PolicyEvaluation evaluation, HoleProblem problem) {
        this.solution = solution;
        this.evaluation = evaluation;
        this.problem = problem;
        space = new OptionSpace(problem);
        evaluator = new Evaluator(problem);
    }

    /**
     * One choice from a spot.
     *
     * @param shot number of the shot in {@code StrikeModel}
     * @param target where it is aimed; a touch shot is meant to stop there
     * @param expected strokes to hole out, this one included
     * @param standardError of the expected strokes, from the spread of independent outcomes
     */
    public record Rated(int shot, Place target, double expected, double standardError) {
        /** Cost beside another choice, strokes; negative if this one is better. */
        public double costBeside(Rated better) {
            return expected - better.expected;
        }

        /** Standard error of that cost; the clouds of two shots are independent. */
        public double costError(Rated other) {
            return Math.hypot(standardError, other.standardError);
        }
    }

    /**
     * Where a choice ends.
     *
     * @param share probability by surface, trouble by its surface too
     * @param sample equally likely places of rest (or of entering a penalty area)
     * @param typical the place of rest in play nearest to the mean of all that stay in play
     */
    public record Finish(Map<Surface, Double> share, List<Place> sample, Place typical) {
        public Finish {
            share = new EnumMap<>(share);
            sample = List.copyOf(sample);
        }
    }

    /** The policy's choice from a spot, rated; fails where the policy declares the ball unplayable. */
    public Rated chosen(Place ball, Surface surface, Situation situation) {
        Option o = solution.choices.option(solution.state(ball, surface, situation));
        Spot spot = spot(ball, surface, situation);
        if (o.isDrop()) {
            return byShot(ball, surface, situation).get(0);
        }
        return rate(spot, o);
    }

    /** The best aim of every shot that can be played from a spot, cheapest first. */
    public List<Rated> byShot(Place ball, Surface surface, Situation situation) {
        Spot spot = spot(ball, surface, situation);
        Map<Integer, Found> best = new TreeMap<>();
        for (Option o : space.all(spot, AIM_CELLS)) {
            if (!o.isDrop()) {
                best.merge(o.shot(), search(spot, o), Found::cheaper);
            }
        }
        List<Rated> out = new ArrayList<>();
        for (Found found : best.values()) {
            out.add(rate(spot, climb(spot, found).option));
        }
        out.sort(Comparator.comparingDouble(Rated::expected));
        return out;
    }

    /** The best aim of one shot from a spot; fails where the lie does not allow it. */
    public Rated aimed(Place ball, Surface surface, Situation situation, int shot) {
        Spot spot = spot(ball, surface, situation);
        Found best = space.all(spot, AIM_CELLS).stream()
                .filter(o -> o.shot() == shot && !o.isDrop())
                .map(o -> search(spot, o))
                .reduce(Found::cheaper)
                .orElseThrow(() -> new IllegalArgumentException("shot " + shot + " is not played from " + surface));
        return rate(spot, climb(spot, best).option);
    }

    private record Found(Option option, double value) {
        Found cheaper(Found other) {
            return other.value < value ? other : this;
        }
    }

    private Found climb(Spot spot, Found start) {
        Found best = start;
        for (int step = 0; step < CLIMB_STEPS; step++) {
            Found from = best;
            for (Option o : space.beside(from.option, spot, false)) {
                if (o.shot() == start.option.shot()) {
                    best = best.cheaper(search(spot, o));
                }
            }
            if (best.equals(from)) {
                break;
            }
        }
        return best;
    }

    /** A given shot at a given target, rated. */
    public Rated rate(Place ball, Surface surface, Situation situation, int shot, Place target) {
        Option o = Option.stroke(shot, problem.raster.column(target), problem.raster.row(target));
        return rate(spot(ball, surface, situation), o);
    }

    private Found search(Spot spot, Option o) {
        evaluator.play(spot, o, SEARCH_POINTS);
        return new Found(o, evaluator.value(evaluation.field, 4));
    }

    private Rated rate(Spot spot, Option o) {
        evaluator.report(spot, o, REPORT_FACTOR * problem.settings.reportPoints(), 0);
        double v = evaluator.value(evaluation.field, 4);
        return new Rated(
                o.shot(), problem.raster.place(o.column(), o.row()), v, evaluator.standardError(evaluation.field, v));
    }

    private Spot spot(Place ball, Surface surface, Situation situation) {
        double column = problem.raster.column(ball);
        double row = problem.raster.row(ball);
        boolean onTee = surface == Surface.TEE && ball.distanceTo(problem.tee()) < 1;
        return new Spot(column, row, surface, situation, onTee, problem.treesFrom(column, row, surface, situation));
    }

    /** A place where a choice may end, with its chance; the surface of trouble too. */
    public record Rest(Place place, Surface surface, double chance) {}

    /** All the places where a choice may end, on the clouds for reporting. */
    public List<Rest> rests(Place ball, Surface surface, Situation situation, Rated choice) {
        Option o = Option.stroke(
                choice.shot(), problem.raster.column(choice.target()), problem.raster.row(choice.target()));
        evaluator.report(spot(ball, surface, situation), o, problem.settings.reportPoints(), 0);
        List<Rest> out = new ArrayList<>();
        for (int i = 0; i < evaluator.size; i++) {
            out.add(new Rest(rest(evaluator.code[i]), surfaceOf(evaluator.code[i]), evaluator.weight[i]));
        }
        return out;
    }

    /** Where a choice ends. */
    public Finish finish(Place ball, Surface surface, Situation situation, Rated choice) {
        Option o = Option.stroke(
                choice.shot(), problem.raster.column(choice.target()), problem.raster.row(choice.target()));
        evaluator.report(spot(ball, surface, situation), o, problem.settings.reportPoints(), 0);
        Map<Surface, Double> share = new EnumMap<>(Surface.class);
        double x = 0;
        double y = 0;
        double inPlay = 0;
        for (int i = 0; i < evaluator.size; i++) {
            double w = evaluator.weight[i];
            Place rest = rest(evaluator.code[i]);
            Surface on = surfaceOf(evaluator.code[i]);
            share.merge(on, w, Double::sum);
            if (on.isPlayable()) {
                x += w * rest.x();
                y += w * rest.y();
                inPlay += w;
            }
        }
        Place mean = inPlay > 0 ? new Place(x / inPlay, y / inPlay) : choice.target();
        return new Finish(share, equallyLikely(), nearestInPlay(mean));
    }

    private Surface surfaceOf(int code) {
        int cells = problem.raster.restCells();
        return code < cells ? problem.raster.surface(code) : problem.relief.area(code - cells);
    }

    private Place rest(int code) {
        int cells = problem.raster.restCells();
        return problem.raster.centre(code < cells ? code : problem.relief.cell(code - cells));
    }

    private Place nearestInPlay(Place mean) {
        Place best = mean;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < evaluator.size; i++) {
            if (surfaceOf(evaluator.code[i]).isPlayable()) {
                Place rest = rest(evaluator.code[i]);
                if (rest.distanceTo(mean) < least) {
                    least = rest.distanceTo(mean);
                    best = rest;
                }
            }
        }
        return best;
    }

    /** The outcomes of the stroke last played, drawn at equal steps of their summed weights. */
    private List<Place> equallyLikely() {
        List<Place> out = new ArrayList<>();
        double sum = 0;
        for (int i = 0; i < evaluator.size; i++) {
            sum += evaluator.weight[i];
            while (out.size() < SAMPLE && sum > (out.size() + 0.5) / SAMPLE) {
                out.add(rest(evaluator.code[i]));
            }
        }
        return out;
    }
}
