package loopwright.scoring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.player.ClubTable;
import loopwright.player.CourseSwing;
import loopwright.player.Player;

/**
 * Misses of one club beside what the plan assumed of it.
 *
 * @param noted swings whose aim and finish were noted
 * @param bias mean direction beside what is assumed, radians, + right; 0 without such swings
 * @param biasError its standard error
 * @param spread of the direction as a multiple of what is assumed, from the root mean square of the solid-looking middle: the
 *     median of the sizes over 0.6745, so that mishits do not count; 1 without such swings
 * @param approaches approaches counted with this club
 * @param left of them; likewise right, shortOf, longOf and onGreen
 */
public record ClubMiss(
        String club,
        int noted,
        double bias,
        double biasError,
        double spread,
        int approaches,
        int left,
        int right,
        int shortOf,
        int longOf,
        int onGreen) {

    /** Rows of all clubs that the rounds tell of, in the order met. */
    public static List<ClubMiss> of(List<RoundRecord> rounds, Player player) {
        Map<String, Gathered> clubs = new LinkedHashMap<>();
        for (RoundRecord round : rounds) {
            CourseSwings.of(round, player)
                    .forEach(s -> clubs.computeIfAbsent(s.club(), c -> new Gathered())
                            .swings
                            .add(s.swing()));
            for (HoleRecord hole : round.holes()) {
                Optional<String> club = hole.counts().approachClub();
                Optional<ApproachResult> result = hole.counts().approach();
                if (club.isPresent() && result.isPresent()) {
                    String name = ClubTable.find(club.get()).map(c -> c.name()).orElse(club.get());
                    clubs.computeIfAbsent(name, c -> new Gathered())
                            .results[result.get().ordinal()]++;
                }
            }
        }
        return clubs.entrySet().stream().map(e -> e.getValue().row(e.getKey())).toList();
    }

    private static final class Gathered {
        private static final double MEDIAN_OF_NORMAL = 0.6745;
        final List<CourseSwing> swings = new ArrayList<>();
        final int[] results = new int[ApproachResult.values().length];

        ClubMiss row(String club) {
            int n = swings.size();
            double bias = swings.stream()
                    .mapToDouble(CourseSwing::offAimRadians)
                    .average()
                    .orElse(0);
            double variance = swings.stream()
                    .mapToDouble(s -> Math.pow(s.offAimRadians() - bias, 2))
                    .average()
                    .orElse(0);
            double[] sizes = swings.stream()
                    .mapToDouble(s ->
                            Math.abs(s.offAimRadians() - bias) / s.pattern().directionSdRadians())
                    .sorted()
                    .toArray();
            double spread = n == 0 ? 1 : (sizes[(n - 1) / 2] + sizes[n / 2]) / 2 / MEDIAN_OF_NORMAL;
            return new ClubMiss(
                    club,
                    n,
                    bias,
                    Math.sqrt(variance / Math.max(1, n - 1)),
                    spread,
                    Arrays.stream(results).sum(),
                    results[ApproachResult.LEFT.ordinal()],
                    results[ApproachResult.RIGHT.ordinal()],
                    results[ApproachResult.SHORT.ordinal()],
                    results[ApproachResult.LONG.ordinal()],
                    results[ApproachResult.ON_GREEN.ordinal()]);
        }
    }
}
