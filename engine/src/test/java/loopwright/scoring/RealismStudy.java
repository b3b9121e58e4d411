package loopwright.scoring;

import java.util.List;
import loopwright.player.Player;

final class RealismStudy {
    public static void main(String[] a) {
        int rounds = 2000;
        List<ReferenceCourse.Ground> treed = ReferenceCourse.holes(1, false);
        List<ReferenceCourse.Ground> open = ReferenceCourse.holes(1, true);
        System.out.println(ReferenceCourse.totalYards());
        for (int level : new int[] {80, 100}) {
            Player p = ReferenceGolfer.of(level);
            double deg = level == 80 ? 5.5 : 7.9;
            show(level + " plan", treed, p, false, rounds);
            show(level + " habit", treed, p, true, rounds);
            show(level + " +20 yd", treed, ReferenceGolfer.longer(p, 20 * 0.9144), true, rounds);
            for (int d = 1; d <= 3; d++)
                show(level + " -" + d + " deg", treed, ReferenceGolfer.straighter(p, deg, d), true, rounds);
            show(level + " open", open, p, true, rounds);
            show(level + " open +20 yd", open, ReferenceGolfer.longer(p, 20 * 0.9144), true, rounds);
            show(level + " open -2 deg", open, ReferenceGolfer.straighter(p, deg, 2), true, rounds);
        }
        for (int level : new int[] {76, 80, 90}) {
            Player p = ReferenceGolfer.of(level);
            show(level + " 5% shorter", ReferenceCourse.holes(0.95, false), p, true, rounds);
            show(level + " 5% longer", ReferenceCourse.holes(1.05, false), p, true, rounds);
        }
        show("90 habit", treed, ReferenceGolfer.of(90), true, rounds);
    }

    private static void show(String name, List<ReferenceCourse.Ground> holes, Player p, boolean habit, int rounds) {
        System.out.println(RoundStatistics.of(holes, p, habit, rounds).line(name, holes.size()));
    }
}
