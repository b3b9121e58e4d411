package loopwright.scoring;

import java.util.*;
import loopwright.course.*;
import loopwright.geo.Place;
import loopwright.ground.*;
import loopwright.numerics.Watch;
import loopwright.player.*;
import loopwright.putting.*;
import loopwright.strategy.*;
import loopwright.units.Distance;

final class AnchorStudy {
    static final double[] YD = {10, 20, 30, 40, 60, 80, 100, 120, 140, 160, 180, 200, 220};
    public static void main(String[] a) throws Exception {
        for (String arg : a) {
            if (arg.contains("=") || arg.contains("*")) { Class.forName("loopwright.player.Tune").getMethod("set", String.class).invoke(null, arg); continue; }
            if (arg.startsWith("s")) { swap(); continue; }
            double level = Double.parseDouble(arg.substring(1));
            if (arg.startsWith("u")) upAndDown(level);
            else if (arg.startsWith("t")) from(level);
            else line(level);
        }
    }
    static Player player(double level) {
        PlayerPrior p = PlayerPrior.of(level, Player.Hand.RIGHT);
        if (System.getProperty("drive") != null) p = p.withDriverCarry(Distance.ofYards(Double.parseDouble(System.getProperty("drive"))));
        else if (level <= 71) p = p.withDriverCarry(Distance.ofYards(270));
        return p.player("x");
    }
    static void upAndDown(double level) {
        Player p = player(level);
        LevelGreenOdds odds = new LevelGreenOdds(p.putting(), GreenSpeed.ofRollMetres(3.048));
        StrikeModel strikes = new StrikeModel(p);
        Ability ability = new Ability(strikes, odds, 1);
        for (AreaKind k : List.of(AreaKind.FAIRWAY, AreaKind.ROUGH, AreaKind.BUNKER)) {
            StringBuilder b = new StringBuilder(String.format("level %.0f %-8s", level, k));
            for (double yd : new double[] {10, 15, 20, 25, 30, 40, 60, 80, 120, 160, 200}) {
                var g = AnchorHole.withPlace(k, yd);
                CourseMap map = new CourseMap(g.course(), g.hole());
                MeanSolution s = MeanSolver.solve(new HoleProblem(map, g.tee(), ability, new SolverSettings(16, 8, 4, 32, 64, 128), ShotRules.FREE), Watch.NONE);
                Policy plan = s.policy(s.evaluate(Watch.NONE));
                MeanSolution h = new HabitPlay(s, Habit.USUAL).played();
                Policy habit = h.policy(h.evaluate(Watch.NONE));
                Place at = AnchorHole.place(0, 391 - yd);
                double[] r = new double[4];
                for (int i = 0; i < 2; i++) {
                    PlayOut out = new PlayOut(map, g.tee(), strikes, new LevelGreenPlay(odds), i == 0 ? plan : habit);
                    SplittableRandom random = new SplittableRandom(1);
                    for (int n = 0; n < 4000; n++) {
                        double u = random.nextDouble();
                        Situation sit = SituationTable.of(k.surface()).get(0).situation();
                        for (var c : SituationTable.of(k.surface())) { sit = c.situation(); u -= c.probability(); if (u < 0) break; }
                        int st = out.playFrom(at, k.surface(), sit, random).strokes();
                        r[2 * i] += st / 4000.0;
                        r[2 * i + 1] += st <= 2 ? 100 / 4000.0 : 0;
                    }
                }
                b.append(String.format("  %.0f: %.2f %.0f%% (%.2f %.0f%%)", yd, r[0], r[1], r[2], r[3]));
            }
            System.out.println(b);
        }
    }
    static void from(double level) {
        Player p = player(level);
        LevelGreenOdds odds = new LevelGreenOdds(p.putting(), GreenSpeed.ofRollMetres(3.048));
        Ability ability = new Ability(new StrikeModel(p), odds, 1);
        for (AreaKind k : List.of(AreaKind.FAIRWAY, AreaKind.ROUGH, AreaKind.BUNKER, AreaKind.WOODS)) {
            var g = AnchorHole.withStrip(400, k);
            MeanSolution s = MeanSolver.solve(new HoleProblem(new CourseMap(g.course(), g.hole()), g.tee(), ability, new SolverSettings(16, 8, 4, 32, 128, 512), ShotRules.FREE), Watch.NONE);
            Policy plan = s.policy(s.evaluate(Watch.NONE));
            Policy habit = null;
            MeanSolution h = new HabitPlay(s, Habit.USUAL).played();
            habit = h.policy(h.evaluate(Watch.NONE));
            StringBuilder b = new StringBuilder(String.format("level %.0f %-8s", level, k));
            for (double yd : YD) {
                Place at = k == AreaKind.WOODS ? AnchorHole.place(42, 391 - yd) : AnchorHole.place(0, 391 - yd);
                b.append(String.format(" %.0f:%.2f/%.2f", yd, plan.valueOfDrop(at, k.surface()), habit.valueOfDrop(at, k.surface())));
            }
            System.out.println(b);
        }
        var g = AnchorHole.withStrip(400, AreaKind.FAIRWAY);
    }
    /** Score of a round of plain holes; with the long game of one level and the short game or putting of another. */
    static double round(Player p) {
        int[][] holes = {{150, 3}, {180, 3}, {320, 4}, {360, 4}, {400, 4}, {440, 4}, {500, 5}, {540, 5}};
        double[] ww = {2, 2, 2, 3, 3, 2, 2, 2}; double sum = 0;
        for (int i = 0; i < 8; i++) sum += ww[i] * RoundStatistics.of(List.of(AnchorHole.plain(holes[i][0], holes[i][1])), p, true, 2000).score;
        return sum;
    }
    static void swap() {
        for (int[] l : new int[][] {{71, 90}, {80, 90}, {80, 100}, {90, 100}}) {
            Player good = PlayerPrior.of(l[0], Player.Hand.RIGHT).player("x"), bad = PlayerPrior.of(l[1], Player.Hand.RIGHT).player("y");
            double a = round(good), b = round(bad);
            Player putts = new Player("z", Player.Hand.RIGHT, bad.level(), bad.swings(), bad.touchShots(), good.putting(), -1);
            Player shortGame = new Player("z", Player.Hand.RIGHT, bad.level(), bad.swings(), good.touchShots(), good.putting(), -1);
            List<Swing> sw = new ArrayList<>();
            for (Swing s : bad.swings()) sw.add(s);
            List<Swing> mixed = new ArrayList<>();
            for (Swing s : bad.swings()) if (s.pattern().carryMetres() >= 91) mixed.add(s);
            for (Swing s : good.swings()) if (s.pattern().carryMetres() < 91) mixed.add(s);
            Player inside = new Player("z", Player.Hand.RIGHT, bad.level(), mixed, good.touchShots(), good.putting(), -1);
            double p = round(putts), q = round(shortGame), r = round(inside);
            System.out.printf("%d to %d: %.2f to %.2f; putting %.2f, short %.2f, wedges under 100 yd %.2f; inside share %.2f%n", l[0], l[1], a, b, b - p, p - q, q - r, (b - r) / (b - a));
        }
    }
    static void line(double level) {
        Player p = player(level);
        int[][] holes = {{150, 3}, {180, 3}, {320, 4}, {360, 4}, {400, 4}, {440, 4}, {500, 5}, {540, 5}};
        double sum = 0, gap = 0, gir = 0, tp = 0, pen = 0, dbl = 0; double[] ww = {2, 2, 2, 3, 3, 2, 2, 2}; int k = 0;
        for (int[] h : holes) {
            RoundStatistics r = RoundStatistics.of(List.of(AnchorHole.plain(h[0], h[1])), p, true, 3000);
            double want = level <= 71 ? 2.38 + 0.0041 * h[0] : level <= 81 ? 2.585 + 0.00535 * h[0] : 2.79 + 0.0066 * h[0];
            System.out.println(r.line(String.format("level %.0f %d yd: line %.2f", level, h[0], want), 1));
            gap += r.score - want; gir += ww[k] * r.greens / 3000; tp += ww[k] * r.threePutts / 3000; pen += ww[k] * r.penalties / 3000; dbl += ww[k++] * r.doubles / 3000;
        }
        double[] w = {2, 2, 2, 3, 3, 2, 2, 2};
        System.out.printf("level %.0f mean gap %.3f greens a round %.2f three-putts %.2f penalties %.2f doubles %.2f%n", level, gap / holes.length, gir, tp, pen, dbl);
    }
}
