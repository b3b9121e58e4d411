package loopwright.scoring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.ClubTable;
import loopwright.player.SituationTable;
import loopwright.player.StrikeModel;
import loopwright.putting.PuttingOdds;
import loopwright.scoring.ShotAttribution.Knowledge;
import loopwright.strategy.Advice;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.Policy;
import loopwright.strategy.PolicyEvaluation;
import org.jspecify.annotations.Nullable;

/**
 * Decision, execution and luck of a hole whose strokes were recorded with their places.
 *
 * <p>With V the expected strokes from a place under the plan, Q(choice) those of the choice made, s and s' the places before
 * and after a stroke: lost = [Q - V(s)] + [E(1 + penalty + V(s')) - Q] + [V(s') - E V(s')]. The first bracket is the decision. From a finish
 * alone the strike is unseen: the expectation in the second runs over how a ball may lie at the recorded place, and luck is
 * how it was found to lie, where that was noted. Summed over a hole they give the score less V(tee), exactly. The player is
 * the one known before the round.
 */
public final class Attribution {
    private final MeanSolution solution;
    private final PolicyEvaluation evaluation;
    private final Advice advice;
    private final Policy policy;
    private final LocalFrame frame;
    private final Place hole;
    private final StrikeModel strikes;
    private final PuttingOdds putting;
    private final boolean inferAims;

    /**
     * @param frame of the course
     * @param inferAims true: an aim that was not noted is averaged over a posterior of aims; false: two parts only
     */
    public Attribution(MeanSolution solution, PolicyEvaluation evaluation, LocalFrame frame, boolean inferAims) {
        this.solution = solution;
        this.evaluation = evaluation;
        this.frame = frame;
        this.inferAims = inferAims;
        advice = new Advice(solution, evaluation);
        policy = solution.policy(evaluation);
        hole = solution.problem().hole();
        strikes = solution.problem().ability().strikes();
        putting = solution.problem().ability().putting();
    }

    /** Expected strokes from the tee, what the parts of a hole are measured from. */
    public double start() {
        return evaluation.expected();
    }

    /** A ball at rest. */
    private record Spot(Place place, Surface surface, Optional<Situation> situation, double average, double value) {}

    /** The strokes of a hole in order; empty if a place is missing, the hole was not finished, or nothing was recorded. */
    public List<ShotAttribution> of(HoleRecord record) {
        if (record.end() != HoleEnd.HOLED
                || record.shots().isEmpty()
                || record.shots().stream().anyMatch(s -> s.place().isEmpty())) {
            return List.of();
        }
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < record.shots().size(); i++) {
            spots.add(spot(record.shots().get(i), i == 0));
        }
        if (spots.stream().anyMatch(s -> !Double.isFinite(s.value()))) {
            return List.of();
        }
        List<ShotAttribution> out = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            Spot next = i + 1 < spots.size() ? spots.get(i + 1) : null;
            out.add(shot(record.number(), i + 1, record.shots().get(i), spots.get(i), next));
        }
        return out;
    }

    private Spot spot(ShotRecord shot, boolean first) {
        Place place = frame.toPlace(shot.place().orElseThrow());
        if (first || shot.lie() == Lie.TEE) {
            Place tee = solution.problem().tee();
            return new Spot(tee, Surface.TEE, Optional.empty(), evaluation.expected(), evaluation.expected());
        }
        if (shot.lie() == Lie.GREEN) {
            double putts = putting.expectedPutts(place.distanceTo(hole));
            return new Spot(place, Surface.GREEN, Optional.empty(), putts, putts);
        }
        Surface surface = offGreen(place, shot.lie());
        double average = evaluation.expectedFrom(place);
        double luck = shot.situation()
                .filter(s -> SituationTable.of(surface).stream().anyMatch(c -> c.situation() == s))
                .map(s -> policy.value(place, surface, s) - averageOfStates(place, surface))
                .orElse(0.0);
        return new Spot(place, surface, shot.situation(), average, average + luck);
    }

    /** What the map says, or what the player wrote where the map shows green or trouble. */
    private Surface offGreen(Place place, Lie lie) {
        Surface mapped = solution.problem().map().surfaceAt(place);
        if (mapped != Surface.GREEN && mapped.isPlayable()) {
            return mapped;
        }
        return switch (lie) {
            case FAIRWAY -> Surface.FAIRWAY;
            case SAND -> Surface.BUNKER;
            case RECOVERY -> Surface.WOODS;
            default -> Surface.ROUGH;
        };
    }

    private double averageOfStates(Place place, Surface surface) {
        return SituationTable.of(surface).stream()
                .mapToDouble(c -> c.probability() * policy.value(place, surface, c.situation()))
                .sum();
    }

    private ShotAttribution shot(int number, int count, ShotRecord shot, Spot from, @Nullable Spot next) {
        double after = 1 + shot.penaltyStrokes() + (next == null ? 0 : next.average());
        double luck = next == null ? 0 : next.value() - next.average();
        String club = shot.club().orElse("");
        if (from.surface() == Surface.GREEN) {
            return undivided(number, count, club, Knowledge.PUTT, after - from.value(), luck);
        }
        int played = shotNumber(club, from, shot);
        if (played < 0) {
            return undivided(number, count, club, Knowledge.UNDIVIDED, after - from.value(), luck);
        }
        Choice choice = choice(shot, from, played, next);
        double decision = choice.expected() - from.value();
        return new ShotAttribution(
                number,
                count,
                club,
                choice.knowledge(),
                decision,
                after - choice.expected(),
                luck,
                choice.doubt(),
                fartherMisses(choice, from, shot, next));
    }

    private static ShotAttribution undivided(
            int hole, int shot, String club, Knowledge knowledge, double lost, double luck) {
        return new ShotAttribution(hole, shot, club, knowledge, 0, lost, luck, 0, OptionalDouble.empty());
    }

    /** The choice as far as it is known; {@code rated} stands for it. */
    private record Choice(Knowledge knowledge, double expected, double doubt, Advice.Rated rated) {}

    private Choice choice(ShotRecord shot, Spot from, int played, @Nullable Spot next) {
        Situation situation = usual(from);
        Optional<Place> aim = shot.intent().aim().map(frame::toPlace);
        if (aim.isPresent()) {
            Advice.Rated rated = rateOverSituations(from, played, aim.get());
            return new Choice(Knowledge.NOTED, rated.expected(), rated.standardError(), rated);
        }
        Advice.Rated best = advice.byShot(from.place(), from.surface(), situation).stream()
                .filter(r -> r.shot() == played)
                .findFirst()
                .orElseGet(() -> advice.rate(from.place(), from.surface(), situation, played, hole));
        Advice.Rated over = rateOverSituations(from, played, best.target());
        if (!inferAims) {
            return new Choice(Knowledge.TWO_PARTS, over.expected(), over.standardError(), over);
        }
        AimPosterior aims = new AimPosterior(
                advice,
                from.place(),
                from.surface(),
                situation,
                played,
                strikes.lengthMetres(played),
                hole,
                best.target(),
                shot.penaltyStrokes() > 0 || next == null ? AimPosterior.trouble() : AimPosterior.at(next.place()));
        double shift = over.expected() - best.expected();
        return new Choice(
                Knowledge.INFERRED, aims.expected() + shift, Math.hypot(aims.sd(), over.standardError()), over);
    }

    private static Situation usual(Spot from) {
        return from.situation()
                .orElseGet(() -> SituationTable.of(from.surface()).get(0).situation());
    }

    /** Where the lie was not noted, its value is an average over situations, and so must be the choice's. */
    private Advice.Rated rateOverSituations(Spot from, int played, Place aim) {
        if (from.situation().isPresent()) {
            return advice.rate(from.place(), from.surface(), from.situation().get(), played, aim);
        }
        double expected = 0;
        double variance = 0;
        for (SituationTable.Chance c : SituationTable.of(from.surface())) {
            double p = c.probability();
            if (strikes.allows(played, from.surface(), c.situation())) {
                Advice.Rated r = advice.rate(from.place(), from.surface(), c.situation(), played, aim);
                expected += p * r.expected();
                variance += p * p * r.standardError() * r.standardError();
            } else { // a lie from which he would have played something else
                expected += p * policy.value(from.place(), from.surface(), c.situation());
            }
        }
        return new Advice.Rated(played, aim, expected, Math.sqrt(variance));
    }

    private OptionalDouble fartherMisses(Choice choice, Spot from, ShotRecord shot, @Nullable Spot next) {
        if (next == null || shot.penaltyStrokes() > 0 || choice.knowledge() != Knowledge.NOTED) {
            return OptionalDouble.empty();
        }
        Advice.Finish finish = advice.finish(from.place(), from.surface(), usual(from), choice.rated());
        double missed = finish.typical().distanceTo(next.place());
        double farther = finish.sample().stream()
                .filter(p -> p.distanceTo(finish.typical()) > missed)
                .count();
        return OptionalDouble.of(farther / finish.sample().size());
    }

    /**
     * The shot a club name stands for: the name of a touch shot; else of the club's efforts, and within reach of touch shots
     * those too for a wedge, the one whose length is nearest to what was left; -1 where the name is not in the bag.
     */
    private int shotNumber(String club, Spot from, ShotRecord shot) {
        if (club.isEmpty()) {
            return -1;
        }
        String name = ClubTable.find(club).map(c -> c.name()).orElse(club);
        double wanted = shot.intent()
                .aim()
                .map(a -> from.place().distanceTo(frame.toPlace(a)))
                .orElseGet(() -> from.place().distanceTo(hole));
        return IntStream.range(0, strikes.shots())
                .filter(s -> strikes.allows(s, from.surface(), usual(from)))
                .filter(s -> strikes.label(s).equalsIgnoreCase(club)
                        || (!strikes.isTouch(s)
                                && strikes.swing(s).club().name().equalsIgnoreCase(name)))
                .boxed()
                .min(Comparator.comparingDouble(
                        s -> strikes.isTouch(s) ? 0 : Math.abs(strikes.lengthMetres(s) - wanted)))
                .orElse(-1);
    }
}
