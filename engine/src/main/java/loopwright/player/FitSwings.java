package loopwright.player;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The clubs and efforts that a fit is about, with what the prior says of each: the bag's, and any other club of the log.
 * Longest first. Where nobody named the bag, a club of the log takes the place of the unseen one whose loft is nearest once
 * the bag is full.
 */
final class FitSwings {

    /** Rule 4.1b allows fourteen clubs, the putter among them. */
    private static final int MOST_BESIDES_PUTTER = 13;

    /** A club and an effort. */
    record Key(Club club, String effort) {}

    private final List<Key> keys;
    private final List<ShotPattern> patterns;
    private final double[][] carryCovariance;
    private final FitShapes[] shapes;
    final double[] trend;

    FitSwings(PlayerPrior prior, ShotLog log, boolean lengthIsStated) {
        Set<Key> all = new LinkedHashSet<>();
        prior.player("").swings().forEach(s -> all.add(new Key(s.club(), s.effort())));
        log.shots().forEach(s -> all.add(new Key(s.club(), s.effort())));
        log.counts().forEach(c -> all.add(new Key(c.club(), c.effort())));
        if (!prior.bagIsStated()) {
            leaveOut(all, seen(log), prior);
        }
        List<Key> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparingDouble(
                        (Key k) -> prior.pattern(k.club(), k.effort()).carryMetres())
                .reversed());
        keys = List.copyOf(sorted);
        patterns = keys.stream().map(k -> prior.pattern(k.club(), k.effort())).toList();
        carryCovariance = covariance(lengthIsStated);
        shapes = patterns.stream().map(FitShapes::new).toArray(FitShapes[]::new);
        trend = patterns.stream().mapToDouble(ShotPattern::carryMetres).toArray();
    }

    private static Set<Club> seen(ShotLog log) {
        return Stream.concat(
                        log.shots().stream().map(Shot::club),
                        log.counts().stream().map(BallCount::club))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static void leaveOut(Set<Key> all, Set<Club> seen, PlayerPrior prior) {
        Set<Club> extra = new LinkedHashSet<>(seen);
        extra.removeAll(prior.bag());
        for (Club club : extra) {
            double loft = ClubTable.loftDegrees(club);
            Set<Club> clubs = all.stream().map(Key::club).collect(Collectors.toCollection(LinkedHashSet::new));
            clubs.stream()
                    .filter(c -> clubs.size() > MOST_BESIDES_PUTTER && !seen.contains(c))
                    .min(Comparator.comparingDouble(c -> Math.abs(ClubTable.loftDegrees(c) - loft)))
                    .ifPresent(c -> all.removeIf(k -> k.club().equals(c)));
        }
    }

    int size() {
        return keys.size();
    }

    Key key(int j) {
        return keys.get(j);
    }

    int index(Club club, String effort) {
        return keys.indexOf(new Key(club, effort));
    }

    ShotPattern pattern(int j) {
        return patterns.get(j);
    }

    /** The mishits' shapes of a swing. */
    FitShapes shapes(int j) {
        return shapes[j];
    }

    int family(int j) {
        return keys.get(j).club().family().ordinal();
    }

    /**
     * Covariance of the relative deviations of carry from the trend: the whole bag, its slope along the loft, neighbours,
     * a partial effort in common, and each club's own.
     */
    double[][] carryCovariance() {
        return carryCovariance;
    }

    private double[][] covariance(boolean stated) {
        double whole = stated ? PriorTable.STATED_LENGTH_SD : PriorTable.UNSTATED_LENGTH_SD;
        int n = keys.size();
        double[][] k = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                k[i][j] = whole * whole + related(keys.get(i), keys.get(j));
            }
        }
        return k;
    }

    private static double related(Key a, Key b) {
        double loftA = ClubTable.loftDegrees(a.club());
        double loftB = ClubTable.loftDegrees(b.club());
        double gap = (loftA - loftB) / PriorTable.NEIGHBOUR_DEGREES;
        double slope = square(PriorTable.TREND_SLOPE_SD) * slopePlace(loftA) * slopePlace(loftB);
        double near = square(PriorTable.NEIGHBOUR_SD) * Math.exp(-gap * gap / 2);
        boolean samePart = a.effort().equals(b.effort()) && !a.effort().equals(Swing.FULL);
        double part = samePart ? square(PriorTable.PARTIAL_SD) : 0;
        double own = a.equals(b) ? square(PriorTable.CLUB_OWN_SD) : 0;
        return slope + near + part + own;
    }

    private static double slopePlace(double loftDegrees) {
        return (loftDegrees - 10.5) / 50;
    }

    private static double square(double x) {
        return x * x;
    }
}
