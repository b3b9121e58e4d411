package loopwright.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import loopwright.putting.CandidatePace;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.putting.LevelPace;
import loopwright.putting.PlaneGreen;
import loopwright.putting.PuttAdvice;
import loopwright.putting.PuttingSkill;
import loopwright.putting.SlopedGreenOdds;
import loopwright.putting.SlopedPace;
import loopwright.putting.SlopedPutt;
import loopwright.units.Distance;

/** Advises on one putt: line, pace, odds, what is left; and draws it. */
public final class PuttAdviser {
    private static final double HOLE_RADIUS_INCHES = 2.125;
    private static final int FINISHES = 400;
    private static final long SEED = 1;
    private static final int HOURS = 12;

    private final PuttPictures pictures;

    public PuttAdviser(PuttPictures pictures) {
        this.pictures = pictures;
    }

    public PuttAnswer answer(PuttQuestion putt) {
        return putt.slope().isPresent() ? sloped(putt, putt.slope().get()) : unmeasured(putt);
    }

    /** Expected putts from as far round the hole, by the hour of the clock: 0 is north, clockwise, twelve of them. */
    public static List<Double> around(PlaneGreen slope, GreenSpeed speed, PuttingSkill skill, double metres) {
        SlopedGreenOdds green = new SlopedGreenOdds(slope, speed, skill, 0, 0);
        List<Double> out = new ArrayList<>();
        for (int hour = 0; hour < HOURS; hour++) {
            double bearing = 2 * Math.PI * hour / HOURS;
            out.add(green.expectedPutts(metres * Math.sin(bearing), metres * Math.cos(bearing)));
        }
        return out;
    }

    private static PuttAnswer sloped(PuttQuestion putt, PlaneGreen slope) {
        SlopedGreenOdds green = new SlopedGreenOdds(slope, putt.speed(), putt.skill(), 0, 0);
        PuttAdvice advice = green.advice(0, -putt.metres());
        SlopedPace best = advice.best();
        List<PuttAnswer.Pace> paces = new ArrayList<>();
        for (SlopedPace pace : advice.choices()) {
            paces.add(new PuttAnswer.Pace(
                    feet(pace.overshootMetres()),
                    aimInches(putt, pace.startRadians()),
                    pace.holed(),
                    green.expectedPutts(pace)));
        }
        double aim = aimInches(putt, best.startRadians());
        return new PuttAnswer(
                feet(putt.metres()),
                feet(putt.speed().rollMetres()),
                true,
                0.0 + 100 * slope.north(),
                0.0 - 100 * slope.east(),
                aim,
                Math.max(0, Math.abs(aim) - HOLE_RADIUS_INCHES) * Math.signum(aim),
                Math.toDegrees(best.startRadians()),
                Math.abs(aimInches(putt, best.throughCentreRadians())),
                feet(best.overshootMetres()),
                new PuttAnswer.Odds(advice.one(), advice.two(), advice.threeOrMore()),
                advice.expectedPutts(),
                new PuttAnswer.Leave(
                        feet(best.leaves().meanMetres()),
                        feet(best.leaves().meanY()),
                        feet(best.leaves().meanX())),
                paces,
                skill(putt),
                PuttAnswer.NOTE);
    }

    private static PuttAnswer unmeasured(PuttQuestion putt) {
        LevelGreenOdds odds = new LevelGreenOdds(putt.skill(), putt.speed());
        double d = putt.metres();
        double one = odds.probability(d, 1);
        double two = odds.probability(d, 2);
        int node = odds.nearestNode(d);
        List<PuttAnswer.Pace> paces = new ArrayList<>();
        LevelPace best = odds.bestPace(node);
        for (LevelPace pace : odds.paces(node)) {
            paces.add(new PuttAnswer.Pace(
                    feet(pace.overshootMetres()), null, pace.holed(), 1 + odds.expectedAfter(pace)));
        }
        return new PuttAnswer(
                feet(d),
                feet(putt.speed().rollMetres()),
                false,
                null,
                null,
                null,
                null,
                null,
                null,
                feet(odds.bestOvershootMetres(d)),
                new PuttAnswer.Odds(one, two, Math.max(0, 1 - one - two)),
                odds.expectedPutts(d),
                new PuttAnswer.Leave(feet(meanLeave(best, odds.nodes())), null, null),
                paces,
                skill(putt),
                PuttAnswer.NOTE);
    }

    private static double meanLeave(CandidatePace pace, double[] metres) {
        return pace.holed() < 1 ? pace.expectedOverLeaves(metres) / (1 - pace.holed()) : 0;
    }

    private static PuttAnswer.Skill skill(PuttQuestion putt) {
        PuttingSkill s = putt.skill();
        return new PuttAnswer.Skill(
                putt.skillFrom(),
                Math.toDegrees(s.startLineSdRadians()),
                100 * s.paceSd(),
                100 * s.readingSd(),
                s.evidence());
    }

    private static double aimInches(PuttQuestion putt, double startRadians) {
        return Distance.ofMetres(putt.metres() * Math.tan(startRadians)).inches();
    }

    private static double feet(double metres) {
        return Distance.ofMetres(metres).feet();
    }

    /**
     * Draws the putt with a sample of where its misses stop.
     *
     * @param words the answer in sentences, the first the heading
     */
    public void draw(PuttQuestion putt, List<String> words, Path target) {
        PlaneGreen slope = putt.slope().orElse(PlaneGreen.LEVEL);
        PuttingSkill skill = putt.slope().isPresent()
                ? putt.skill()
                : new PuttingSkill(
                        putt.skill().directionSdRadians(), putt.skill().paceSd(), 0, 0);
        SlopedGreenOdds green = new SlopedGreenOdds(slope, putt.speed(), skill, 0, 0);
        SlopedPace best = green.advice(0, -putt.metres()).best();
        List<double[]> path =
                green.roll().trace(0, -putt.metres(), best.startRadians(), best.startSpeed(), putt.metres() / 60);
        pictures.drawPutt(
                new PuttPicture(
                        putt.metres(),
                        putt.slope(),
                        best.startRadians(),
                        path,
                        finishes(putt, new SlopedPutt(slope, putt.speed(), skill, 0, 0), best),
                        words),
                target);
    }

    private static List<double[]> finishes(PuttQuestion putt, SlopedPutt stroke, SlopedPace pace) {
        RandomGenerator random = new SplittableRandom(SEED);
        List<double[]> out = new ArrayList<>();
        for (int i = 0; i < FINISHES; i++) {
            SlopedPutt.Finish finish = stroke.play(
                    0,
                    -putt.metres(),
                    pace.startRadians(),
                    pace.startSpeed(),
                    random.nextGaussian(),
                    random.nextGaussian());
            if (!finish.holed()) {
                out.add(new double[] {finish.x(), finish.y()});
            }
        }
        return out;
    }
}
