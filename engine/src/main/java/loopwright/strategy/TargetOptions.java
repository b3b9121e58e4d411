package loopwright.strategy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loopwright.numerics.Watch;
import loopwright.player.StrikeModel;

/**
 * What target play may choose from: of every state the options within 0.2 strokes of its mean-best one, which comes first.
 * Where play comes by often everything is looked at, elsewhere the neighbourhood of the mean-best option, and where it
 * hardly ever comes by nothing else. How often is counted with the tee shot spread over all its own options, so that the
 * places target play leads to are not overlooked.
 */
final class TargetOptions {
    /** Measured on a prototype: costs 6e-5 in the probability; 0.05 would be too tight. */
    static final double WITHIN = 0.2;

    private static final double OFTEN = 1e-3;
    private static final double SOMETIMES = 1e-4;
    private static final double SELDOM = 3e-5;
    private static final int TEE_POINTS = 1024;
    private static final int MOST_AT_TEE = 48;
    private static final int MOST_OFTEN = 16;
    private static final int MOST_SOMETIMES = 7;
    private static final int MOST_SELDOM = 3;
    private static final double TEE_AIM_CELLS = 6;
    private static final double AIM_CELLS = 10;
    private static final int FIRST_LOOK = 32;

    private final MeanSolution solution;
    private final PolicyEvaluation evaluation;
    private final StrikeModel strikes;
    private final OptionSpace space;
    private final Evaluator evaluator;
    /** By state. */
    final List<List<Option>> options = new ArrayList<>();
    /** By state, the number of its first option among all options of all states; their count at the end. */
    final int[] first;
    /** Points of the clouds each state chooses on. */
    final int[] points;
    /** About how often each state is met. */
    final double[] importance;

    TargetOptions(MeanSolution solution, PolicyEvaluation evaluation, OutcomeRows usual, Watch watch) {
        this.solution = solution;
        this.evaluation = evaluation;
        strikes = solution.problem.ability.strikes();
        space = new OptionSpace(solution.problem);
        evaluator = new Evaluator(solution.problem);
        points = new int[solution.nodes.states];
        options.add(atTheTee());
        points[0] = TEE_POINTS;
        importance = importance(usual, watch);
        for (int s = 1; s < points.length; s++) {
            if (s % 256 == 0) {
                watch.check();
            }
            options.add(select(s));
        }
        first = new int[options.size() + 1];
        for (int s = 0; s < options.size(); s++) {
            first[s + 1] = first[s] + options.get(s).size();
        }
    }

    private double[] importance(OutcomeRows usual, Watch watch) {
        List<Option> tee = options.get(0);
        NodePolicy all = new NodePolicy(tee.size());
        IntStream.range(0, tee.size()).forEach(i -> all.set(i, tee.get(i)));
        Spot[] spots = new Spot[tee.size()];
        int[] each = new int[tee.size()];
        java.util.Arrays.fill(spots, solution.spots[0]);
        java.util.Arrays.fill(each, TEE_POINTS / 4);
        OutcomeRows rows = OutcomeRows.of(solution.problem, all, spots, each, watch);
        double[] spread = new ForwardPlay(solution.nodes, usual, evaluation, evaluation.green, rows).visits;
        double[] out = new double[points.length];
        for (int s = 0; s < out.length; s++) {
            out[s] = Math.max(evaluation.visits(s), spread[s]);
        }
        return out;
    }

    private List<Option> atTheTee() {
        Spot spot = solution.spots[0];
        Option chosen = solution.choices.option(0);
        List<Option> all = new ArrayList<>(space.all(spot, TEE_AIM_CELLS));
        all.addAll(variants(chosen, spot));
        return within(0, all, TEE_POINTS, MOST_AT_TEE);
    }

    private List<Option> select(int s) {
        Spot spot = solution.spots[s];
        Option chosen = solution.choices.option(s);
        if (importance[s] > OFTEN) {
            points[s] = 256;
            List<Option> all = new ArrayList<>(space.all(spot, AIM_CELLS));
            all.addAll(variants(chosen, spot));
            return within(s, all, 128, MOST_OFTEN);
        }
        points[s] = importance[s] > SOMETIMES ? 128 : importance[s] > SELDOM ? 64 : 32;
        if (importance[s] > SOMETIMES) {
            return within(s, variants(chosen, spot), 64, MOST_SOMETIMES);
        }
        return importance[s] > SELDOM ? within(s, space.beside(chosen, spot, true), 48, MOST_SELDOM) : List.of(chosen);
    }

    /** One club longer and shorter, aims two steps either side, touch shots two steps in length and of another kind. */
    private List<Option> variants(Option chosen, Spot spot) {
        List<Option> near = space.beside(chosen, spot, true);
        List<Option> out = new ArrayList<>(near);
        near.stream().filter(o -> o.shot() == chosen.shot()).forEach(o -> out.addAll(space.beside(o, spot, false)));
        for (int shot = 0; shot < strikes.shots(); shot++) {
            if (strikes.isTouch(shot) && strikes.isTouch(chosen.shot()) && shot != chosen.shot()) {
                Optional<Option> same = space.from(Option.stroke(shot, chosen.column(), chosen.row()), spot);
                same.ifPresent(out::add);
            }
        }
        return out;
    }

    private record Rated(Option option, double value) {}

    /** The chosen option, then those within reach of it, cheapest first, none twice. */
    private List<Option> within(int s, List<Option> candidates, int points, int most) {
        Option chosen = solution.choices.option(s);
        double limit = value(s, chosen, FIRST_LOOK) + WITHIN;
        double final0 = value(s, chosen, points) + WITHIN;
        List<Option> out = new ArrayList<>(List.of(chosen));
        candidates.stream()
                .distinct()
                .filter(o -> !o.equals(chosen) && value(s, o, FIRST_LOOK) <= limit)
                .map(o -> new Rated(o, value(s, o, points)))
                .filter(r -> r.value <= final0)
                .sorted(Comparator.comparingDouble(Rated::value))
                .limit(most - 1L)
                .forEach(r -> out.add(r.option));
        return out;
    }

    private double value(int s, Option o, int points) {
        if (o.isDrop()) {
            return o.penalty() + evaluation.field.ofCell(solution.problem.raster.cell(o.column(), o.row()));
        }
        evaluator.play(solution.spots[s], o, points);
        return evaluator.value(evaluation.field, evaluation.value[s]);
    }
}
