package loopwright.player;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import loopwright.numerics.Watch;

/**
 * Fits a player's swings to whatever balls there are, starting from the prior: robust layered mixture, posterior by seeded
 * Gibbs sampling ({@link FitSampler}). Six balls give a sane and wide answer, six hundred a tight one; clubs without a ball
 * follow the bag's trend and what the other clubs tell of the player. Same log, options and seed: same player.
 */
public final class PatternFit {
    private static final int BURN_IN = 200;
    /** Fewest and most kept sweeps, and the work (ball draws) they are cut to. */
    private static final int FEWEST = 1200;

    private static final int MOST = 20_000;
    private static final double WORK = 1.0e6;
    /** Draws that intervals of widths, the dear ones, are read from; 200 would narrow a 90 % interval to 89 %. */
    private static final int REPORTED = 400;
    /** A stated length that the balls contradict by more than this (log) gives way to them. */
    private static final double CONTRADICTED = 0.3;
    /** Balls as good as this share of them are solid even where most are mishit. */
    private static final double GOOD = 0.85;
    /** However short the balls, they do not tell of a length under half of what was thought. */
    private static final double MOST_SHORT = 0.7;
    /** Fewer balls than this do not tell a length by themselves. */
    private static final int FEW = 12;
    /** Weight of what was thought beside few balls, a swing of some balls counting about 1. */
    private static final double DOUBT_OF_LENGTH = 0.5;

    private PatternFit() {}

    public static FittedPlayer fit(
            String name, PlayerPrior prior, ShotLog log, FitOptions options, long seed, Watch watch) {
        PlayerPrior centred = centred(prior, log);
        FitSwings swings = new FitSwings(centred, log, prior.lengthIsStated());
        FitBalls balls = new FitBalls(log, swings, options);
        FitDraws draws = sample(swings, balls, options, seed, watch);
        return result(name, centred, swings, balls, draws);
    }

    private static FitDraws sample(FitSwings swings, FitBalls balls, FitOptions options, long seed, Watch watch) {
        FitSampler sampler = new FitSampler(swings, balls, new SplittableRandom(seed));
        FitDraws draws = new FitDraws(swings, balls);
        int kept = options.sweeps() > 0 ? options.sweeps() : sweeps(balls.size);
        for (int i = 0; i < BURN_IN + kept; i++) {
            if (i % 100 == 0) {
                watch.check();
                watch.at(i, BURN_IN + kept);
            }
            sampler.sweep();
            if (i >= BURN_IN) {
                draws.keep(sampler.state(), sampler.scales());
            }
        }
        return draws;
    }

    private static int sweeps(int balls) {
        return (int) Math.max(FEWEST, Math.min(MOST, WORK / (balls + 150)));
    }

    /** Moves the trend to the balls where no length was stated, or where the balls contradict it. */
    private static PlayerPrior centred(PlayerPrior prior, ShotLog log) {
        PlayerPrior out = prior;
        for (int pass = 0; pass < 3; pass++) {
            double shift = logLengthAgainst(out, log, prior.lengthIsStated());
            boolean believed = prior.lengthIsStated() && pass == 0 && Math.abs(shift) < CONTRADICTED;
            if (believed || Math.abs(shift) < 1e-3) {
                return out;
            }
            out = out.withLengthTimes(Math.exp(shift));
        }
        return out;
    }

    /** Mean log ratio of each swing's solid carry to the prior's, drawn to zero where there are few balls. */
    private static double logLengthAgainst(PlayerPrior prior, ShotLog log, boolean stated) {
        FitSwings swings = new FitSwings(prior, log, true);
        double sum = 0;
        double weights = log.shots().size() < FEW ? DOUBT_OF_LENGTH : 0;
        for (int j = 0; j < swings.size(); j++) {
            double[] carries = carries(log, swings, j);
            if (carries.length > 0) {
                double weight = carries.length / (carries.length + 3.0);
                sum += weight * logSolidAgainst(carries, swings.pattern(j).carryMetres(), stated);
                weights += weight;
            }
        }
        return weights > 0 ? sum / weights : 0;
    }

    /**
     * Mishits are short: balls are longer than the prior if their 60 % quantile is, but they unsay a stated length, or tell a
     * shorter one where they are few, only if even the good ones, the {@value #GOOD} quantile, are short. Six balls with two
     * topped ones say nothing against what the player said.
     */
    private static double logSolidAgainst(double[] carries, double expected, boolean stated) {
        double usual = logRatio(carries, 0.6, expected);
        if (usual > 0 || (!stated && carries.length >= FEW)) {
            return usual;
        }
        return Math.max(-MOST_SHORT, Math.min(0, logRatio(carries, GOOD, expected)));
    }

    private static double logRatio(double[] sorted, double share, double expected) {
        return Math.log(Math.max(1, sorted[(int) (share * sorted.length)]) / expected);
    }

    private static double[] carries(ShotLog log, FitSwings swings, int j) {
        FitSwings.Key key = swings.key(j);
        double run = swings.pattern(j).runMetres() / swings.pattern(j).carryMetres();
        return log.shots().stream()
                .filter(s -> s.club().equals(key.club()) && s.effort().equals(key.effort()))
                .mapToDouble(s -> s.carryMetres().orElse(s.totalMetres().orElse(0) / (1 + run)))
                .sorted()
                .toArray();
    }

    private static FittedPlayer result(
            String name, PlayerPrior prior, FitSwings swings, FitBalls balls, FitDraws draws) {
        FitDraw mean = draws.mean();
        List<FitDraw> thinned = thinned(draws.draws());
        List<SwingReport> reports = new ArrayList<>();
        for (int j = 0; j < swings.size(); j++) {
            FitSwings.Key key = swings.key(j);
            ShotPattern[] all = patterns(draws, draws.draws(), j);
            double assumed = balls.size == 0 ? 1 : assumedShare(all, swings.pattern(j));
            Evidence evidence = new Evidence(balls.count(j), assumed);
            Swing swing = new Swing(key.club(), key.effort(), draws.pattern(mean, j), evidence);
            reports.add(report(swing, all, patterns(draws, thinned, j)));
        }
        reports.sort(Comparator.comparingDouble(
                        (SwingReport r) -> r.swing().pattern().carryMetres())
                .reversed());
        Player assumed = prior.player(name);
        Player player = new Player(
                name,
                assumed.hand(),
                assumed.level(),
                reports.stream().map(SwingReport::swing).toList(),
                assumed.touchShots(),
                assumed.putting(),
                assumed.lostBallsPerRound());
        return new FittedPlayer(new PlayerProfile(player, draws.day()), reports);
    }

    private static ShotPattern[] patterns(FitDraws draws, List<FitDraw> of, int j) {
        return of.stream().map(d -> draws.pattern(d, j)).toArray(ShotPattern[]::new);
    }

    private static SwingReport report(Swing swing, ShotPattern[] all, ShotPattern[] some) {
        return new SwingReport(
                swing,
                interval(all, ShotPattern::carryMetres),
                interval(all, ShotPattern::totalMetres),
                interval(all, ShotPattern::directionRadians),
                interval(some, p -> PatternWidth.metres(p, 0.8)),
                interval(some, p -> PatternWidth.metres(p, 0.95)),
                interval(all, ShotPattern::mishitRate).about(swing.pattern().mishitRate()));
    }

    private static Interval interval(ShotPattern[] patterns, ToDoubleFunction<ShotPattern> value) {
        return Interval.of(Arrays.stream(patterns).mapToDouble(value).toArray());
    }

    private static List<FitDraw> thinned(List<FitDraw> draws) {
        List<FitDraw> out = new ArrayList<>();
        int step = Math.max(1, draws.size() / REPORTED);
        for (int i = 0; i < draws.size(); i += step) {
            out.add(draws.get(i));
        }
        return out;
    }

    /**
     * What is left of the prior's variance of the logarithm of a spread of directions: of solid balls, or of all where that is
     * less. Balls may tell the whole well and leave open which of them were solid.
     */
    private static double assumedShare(ShotPattern[] draws, ShotPattern prior) {
        double spread = Math.hypot(PriorTable.SHARED_LOG_SPREAD_SD, PriorTable.CLUB_LOG_SPREAD_SD);
        double solid = logVariance(draws, ShotPattern::directionSdRadians) / (spread * spread);
        double whole = logVariance(draws, ShotPattern::wholeDirectionSdRadians) / priorVariance(prior, spread);
        return Math.max(0, Math.min(1, Math.min(solid, whole)));
    }

    private static double logVariance(ShotPattern[] draws, ToDoubleFunction<ShotPattern> spread) {
        double mean = 0;
        double squares = 0;
        for (ShotPattern p : draws) {
            double log = Math.log(spread.applyAsDouble(p));
            mean += log / draws.length;
            squares += log * log / draws.length;
        }
        return squares - mean * mean;
    }

    /** That of all balls before any was seen, to the first order in the logarithms of solid spread and mishit rate. */
    private static double priorVariance(ShotPattern p, double spread) {
        double rate = Math.hypot(PriorTable.SHARED_LOG_MISHIT_SD, PriorTable.FAMILY_LOG_MISHIT_SD);
        double bySpread =
                halfLogRatio(p.withDirectionSpread(Math.exp(spread)), p.withDirectionSpread(Math.exp(-spread)));
        double most = PriorTable.MOST_MISHITS / Math.max(1e-9, p.mishitRate());
        double byRate =
                halfLogRatio(p.withMishitsTimes(Math.min(most, Math.exp(rate))), p.withMishitsTimes(Math.exp(-rate)));
        return bySpread * bySpread + byRate * byRate;
    }

    private static double halfLogRatio(ShotPattern wide, ShotPattern narrow) {
        return Math.log(wide.wholeDirectionSdRadians() / narrow.wholeDirectionSdRadians()) / 2;
    }
}
