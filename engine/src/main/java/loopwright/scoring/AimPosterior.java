package loopwright.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.strategy.Advice;

/**
 * Where a player may have aimed, given where the ball finished: candidate aims weighed by a prior and by how often his
 * pattern, aimed there, finishes near that place.
 *
 * <p>The prior is assumed: three in ten at the hole, three in ten where the plan aims, the rest over a fan of directions
 * about the hole, normal with {@value #FAN_SD_DEGREES} degrees. The density of finishes is estimated from equally likely
 * places with a normal kernel (Scott's rule in two dimensions, Scott 1992; from memory).
 */
final class AimPosterior {
    private static final double FAN_SD_DEGREES = 6;
    private static final double FAN_STEP_DEGREES = 2;
    private static final int FAN_STEPS = 7;
    private static final double SURE_SHARE = 0.3;
    /** A place that no aim explains says nothing about aims. */
    private static final double FLOOR = 1e-7;

    private final List<Candidate> candidates = new ArrayList<>();

    private record Candidate(Advice.Rated rated, double weight) {}

    /** Aims for one shot from a spot; {@code finish} is where it came to rest, or null where it ended in trouble. */
    AimPosterior(
            Advice advice,
            Place ball,
            Surface surface,
            Situation situation,
            int shot,
            double reach,
            Place hole,
            Place planned,
            Result result) {
        List<Place> aims = new ArrayList<>();
        List<Double> prior = new ArrayList<>();
        aims.add(hole);
        prior.add(SURE_SHARE);
        aims.add(planned);
        prior.add(SURE_SHARE);
        fan(ball, hole, reach, aims, prior);
        double sum = 0;
        List<Candidate> found = new ArrayList<>();
        for (int i = 0; i < aims.size(); i++) {
            Advice.Rated rated = advice.rate(ball, surface, situation, shot, aims.get(i));
            double likelihood = result.likelihood(advice.finish(ball, surface, situation, rated));
            double weight = prior.get(i) * Math.max(FLOOR, likelihood);
            found.add(new Candidate(rated, weight));
            sum += weight;
        }
        for (Candidate c : found) {
            candidates.add(new Candidate(c.rated(), c.weight() / sum));
        }
    }

    /** What is known of where a ball ended. */
    interface Result {
        double likelihood(Advice.Finish finish);
    }

    /** It came to rest here. */
    static Result at(Place place) {
        return finish -> density(finish.sample(), place);
    }

    /** It ended in a penalty area, out of bounds or lost. */
    static Result trouble() {
        return finish -> finish.share().entrySet().stream()
                .filter(e -> !e.getKey().isPlayable())
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }

    private static void fan(Place ball, Place hole, double reach, List<Place> aims, List<Double> prior) {
        double bearing = ball.bearingTo(hole);
        double away = Math.min(reach, ball.distanceTo(hole));
        double sum = 0;
        double[] weight = new double[2 * FAN_STEPS + 1];
        for (int k = -FAN_STEPS; k <= FAN_STEPS; k++) {
            double z = k * FAN_STEP_DEGREES / FAN_SD_DEGREES;
            weight[k + FAN_STEPS] = Math.exp(-z * z / 2);
            sum += weight[k + FAN_STEPS];
        }
        for (int k = -FAN_STEPS; k <= FAN_STEPS; k++) {
            aims.add(ball.along(bearing + Math.toRadians(k * FAN_STEP_DEGREES), away));
            prior.add((1 - 2 * SURE_SHARE) * weight[k + FAN_STEPS] / sum);
        }
    }

    private static double density(List<Place> sample, Place at) {
        double meanX = sample.stream().mapToDouble(Place::x).average().orElse(0);
        double meanY = sample.stream().mapToDouble(Place::y).average().orElse(0);
        double squares = 0;
        for (Place p : sample) {
            squares += (p.x() - meanX) * (p.x() - meanX) + (p.y() - meanY) * (p.y() - meanY);
        }
        double sd = Math.max(1, Math.sqrt(squares / (2 * sample.size())));
        double width = sd * Math.pow(sample.size(), -1.0 / 6);
        double sum = 0;
        for (Place p : sample) {
            double away = p.distanceTo(at) / width;
            sum += Math.exp(-away * away / 2);
        }
        return sum / (sample.size() * 2 * Math.PI * width * width);
    }

    /** Expected strokes of the choice, over the aims. */
    double expected() {
        return candidates.stream()
                .mapToDouble(c -> c.weight() * c.rated().expected())
                .sum();
    }

    /** Standard deviation of the expected strokes over the aims: how little the finish tells of the aim. */
    double sd() {
        double mean = expected();
        double variance = candidates.stream()
                .mapToDouble(c -> c.weight() * Math.pow(c.rated().expected() - mean, 2))
                .sum();
        return Math.sqrt(variance);
    }
}
