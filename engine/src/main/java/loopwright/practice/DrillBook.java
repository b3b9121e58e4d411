package loopwright.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.practice.PuttStation.Task;

/**
 * Drills that come with the program. What a drill is good for and how it is set up is common practice, no source; distances, sizes
 * and minutes are assumed. A coach's own drills stand beside them.
 */
public final class DrillBook {
    private static final double FOOT = 0.3048;
    private static final double YARD = 0.9144;

    private DrillBook() {}

    /**
     * All drills.
     *
     * @param corridorMetres room for the tee shot of the player's own first hole; 32 m (35 yd) where nobody knows it
     */
    public static List<Drill> all(double corridorMetres) {
        List<Drill> out = new ArrayList<>(putting());
        out.addAll(shortGame());
        out.addAll(longGame(corridorMetres));
        return List.copyOf(out);
    }

    private static List<Drill> putting() {
        return List.of(
                new Drill(
                        "circle-3",
                        Facility.GREEN,
                        10,
                        "Hole the putts that save strokes.",
                        "Twelve balls in a circle 3 ft from the hole, like the hours of a clock, on a gentle slope.",
                        "One point for every ball holed. Play each to finish a foot past if it missed. Go once round.",
                        "Start line and reading together; pace hardly at all.",
                        List.of(new PuttStation(Task.HOLE, 3 * FOOT, 12))),
                new Drill(
                        "circle-6",
                        Facility.GREEN,
                        15,
                        "Hole more from where half go in.",
                        "Twelve balls in a circle 6 ft from the hole, like the hours of a clock, on a gentle slope.",
                        "One point for every ball holed. Play each to finish a foot past if it missed. Go once round.",
                        "Start line and reading together; beside the gate, which needs no reading, the two come apart.",
                        List.of(new PuttStation(Task.HOLE, 6 * FOOT, 12))),
                new Drill(
                        "long-putts",
                        Facility.GREEN,
                        15,
                        "Leave long putts where the next one is short.",
                        "Tees at 30, 40 and 50 ft from a hole, a club laid 3 ft behind it. Four balls from each,"
                                + " changing the distance with every ball.",
                        "One point for a ball that is holed or stops between the hole and three feet past it.",
                        "Pace alone: to either side everything counts, so line hardly matters.",
                        List.of(
                                new PuttStation(Task.PAST, 30 * FOOT, 4),
                                new PuttStation(Task.PAST, 40 * FOOT, 4),
                                new PuttStation(Task.PAST, 50 * FOOT, 4))),
                new Drill(
                        "gate",
                        Facility.GREEN,
                        10,
                        "Start the ball where you aim.",
                        "A straight, level line. Two tees a ball and a half apart, 18 in before the ball on the line.",
                        "One point for every one of twenty balls that goes through without touching a tee.",
                        "Start line alone: nothing is read, and pace does not matter.",
                        List.of(new PuttStation(Task.GATE, 18 * FOOT / 12, 20))));
    }

    private static List<Drill> shortGame() {
        List<Station> ladder = new ArrayList<>();
        for (int yards : new int[] {62, 45, 88, 53, 74, 95, 40, 67, 81, 58}) {
            ladder.add(new ShotStation(
                    DrillShot.WEDGE, yards * YARD, List.of(Zone.inside(0.08 * yards * YARD + YARD)), 1));
        }
        return List.of(
                new Drill(
                        "wedge-distances",
                        Facility.RANGE,
                        20,
                        "Hit a wedge the distance that is asked for.",
                        "Ten targets, or ten measured distances, called in this order: 62, 45, 88, 53, 74, 95, 40, 67,"
                                + " 81, 58 yd. A new club and swing for each ball.",
                        "One point for a ball that ends within 8 % of the distance and a yard more of the target.",
                        "Partial and full wedges together.",
                        ladder),
                new Drill(
                        "landing-spot",
                        Facility.SHORT_GAME_AREA,
                        15,
                        "Land a chip where you look.",
                        "A towel or a ring of tees 6 yd away on the green, 3 ft to every side of its middle counts.",
                        "One point for each of fifteen balls that lands in it on the fly.",
                        "Chips: the strike and the length of the carry, not the roll.",
                        List.of(new ShotStation(DrillShot.CHIP, 6 * YARD, List.of(Zone.lands(3 * FOOT)), 15))),
                new Drill(
                        "pitch-circle",
                        Facility.SHORT_GAME_AREA,
                        15,
                        "Leave a pitch a putt that goes in.",
                        "A hole 25 yd away with a circle 9 ft round it.",
                        "One point for each of fifteen balls that ends inside.",
                        "Pitches alone.",
                        List.of(new ShotStation(DrillShot.PITCH, 25 * YARD, List.of(Zone.inside(9 * FOOT)), 15))),
                new Drill(
                        "up-and-down",
                        Facility.SHORT_GAME_AREA,
                        25,
                        "Two strokes from round the green, as on the course.",
                        "Ten spots round a green: five chips from 8 to 16 yd, three pitches from 20 to 30 yd, two from"
                                + " sand at 12 yd. One ball from each, and putt out.",
                        "One point for two strokes or fewer.",
                        "The whole short game at once; what spoils it the other drills tell.",
                        List.of(
                                new UpAndDownStation(DrillShot.CHIP, 8 * YARD, 2),
                                new UpAndDownStation(DrillShot.CHIP, 12 * YARD, 2),
                                new UpAndDownStation(DrillShot.CHIP, 16 * YARD, 1),
                                new UpAndDownStation(DrillShot.PITCH, 20 * YARD, 2),
                                new UpAndDownStation(DrillShot.PITCH, 30 * YARD, 1),
                                new UpAndDownStation(DrillShot.BUNKER_SHOT, 12 * YARD, 2))),
                new Drill(
                        "bunker-out-and-inside",
                        Facility.SHORT_GAME_AREA,
                        15,
                        "Out first, then close.",
                        "Ten balls in ordinary sand, a hole 12 yd away with a circle 10 ft round it.",
                        "One point for a ball that is out of the sand, a second if it ends inside the circle.",
                        "Bunker shots alone: strike by the first point, length by the second.",
                        List.of(new ShotStation(
                                DrillShot.BUNKER_SHOT, 12 * YARD, List.of(Zone.out(), Zone.inside(10 * FOOT)), 10))));
    }

    private static List<Drill> longGame(double corridor) {
        return List.of(
                new Drill(
                        "tee-corridor",
                        Facility.RANGE,
                        20,
                        "Put the first tee shot in play.",
                        String.format(
                                Locale.ROOT,
                                "Two marks on the range %.0f yd apart at driving distance: the room on the first hole."
                                        + " Ten drives, the whole routine before each, a different club in hand between"
                                        + " two.",
                                corridor / YARD),
                        "One point for a ball that ends between the marks and has gone six tenths of its way.",
                        "Driver direction and mishits together.",
                        List.of(new ShotStation(DrillShot.DRIVER, 200, List.of(Zone.corridor(corridor)), 10))),
                new Drill(
                        "safe-half",
                        Facility.RANGE,
                        20,
                        "Play to the side of the green where a miss costs little.",
                        "A green or two marks 150 yd away: the half away from the trouble is 15 yd wide and 25 yd"
                                + " deep. Aim at its middle.",
                        "One point for each of ten balls that ends on it.",
                        "Approaches of that length, with mishits.",
                        List.of(new ShotStation(
                                DrillShot.FULL_SWING, 150 * YARD, List.of(Zone.half(15 * YARD, 25 * YARD)), 10))),
                new Drill(
                        "long-approach",
                        Facility.RANGE,
                        20,
                        "Get near the green from far away.",
                        "A target 180 yd away (the longest club off the ground that reaches it), 20 yd to every side"
                                + " count.",
                        "One point for each of ten balls that ends inside.",
                        "Long approaches, with mishits.",
                        List.of(new ShotStation(
                                DrillShot.FULL_SWING, 180 * YARD, List.of(Zone.inside(20 * YARD)), 10))),
                new Drill(
                        "nine-imagined-holes",
                        Facility.RANGE,
                        30,
                        "Play your own course on the range, one ball a shot.",
                        "Nine holes of your own course in mind: a drive between marks as wide as the first fairway,"
                                + " then the approach that would be left (three each of 110, 140 and 165 yd) at a green 24"
                                + " yd across.",
                        "One point for a drive between the marks, one for an approach on the green; 18 at most.",
                        "Tee shots and approaches as they follow each other, one of each: nothing is grooved.",
                        List.of(
                                new ShotStation(DrillShot.DRIVER, 200, List.of(Zone.corridor(corridor)), 9),
                                new ShotStation(DrillShot.FULL_SWING, 110 * YARD, List.of(Zone.inside(12 * YARD)), 3),
                                new ShotStation(DrillShot.FULL_SWING, 140 * YARD, List.of(Zone.inside(12 * YARD)), 3),
                                new ShotStation(DrillShot.FULL_SWING, 165 * YARD, List.of(Zone.inside(12 * YARD)), 3))),
                new Drill(
                        "warm-up",
                        Facility.RANGE,
                        20,
                        "Be ready on the first tee, and know today's ball.",
                        "Five wedges to 60 yd, five irons to 140 yd, five drives between the marks; write down how"
                                + " many went left, right or were missed. The last one is the first tee shot, with the"
                                + " plan's club and aim.",
                        "One point for a wedge within 6 yd, an iron within 12 yd, a drive between the marks.",
                        "Today's ball: the tallies by club are what a plan for the day takes in. Five balls say little"
                                + " about skill.",
                        List.of(
                                new ShotStation(DrillShot.WEDGE, 60 * YARD, List.of(Zone.inside(6 * YARD)), 5),
                                new ShotStation(DrillShot.FULL_SWING, 140 * YARD, List.of(Zone.inside(12 * YARD)), 5),
                                new ShotStation(DrillShot.DRIVER, 200, List.of(Zone.corridor(corridor)), 5))));
    }
}
