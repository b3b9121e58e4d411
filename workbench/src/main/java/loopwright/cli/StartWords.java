package loopwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.action.RoundPlan;
import loopwright.units.Distance;

/** How a ball is started, in words. */
final class StartWords {
    private static final double LEAST_INCHES = 0.5;
    private static final double LEAST_YARDS = 1;

    private StartWords() {}

    /** Where start line and finish part, and what a head wind asks for; nothing where there is nothing to say. */
    static List<String> of(RoundPlan.ShotPlan s) {
        List<String> out = new ArrayList<>();
        double inches = s.start().spotOffsetMetres() / Distance.METRES_PER_INCH;
        double beside = beside(s);
        if (Math.abs(inches) >= LEAST_INCHES && Math.abs(beside) >= LEAST_YARDS) {
            out.add(String.format(
                    Locale.ROOT,
                    "start line: over a spot %.1f in %s of the line to the finish, two club-lengths ahead; it finishes"
                            + " %.0f yd %s of the start line",
                    Math.abs(inches),
                    side(inches),
                    Math.abs(beside),
                    side(beside)));
        }
        double clubs = s.start().moreClubs();
        if (clubs > 0) {
            out.add("into the wind: "
                    + (clubs == 0.5 ? "half a club" : clubs == 1 ? "one club" : number(clubs) + " clubs")
                    + " more than in still air, same swing");
        }
        return out;
    }

    /** The tee shot's other start lines. */
    static Optional<String> otherLines(RoundPlan.HolePlan hole) {
        List<String> out = new ArrayList<>();
        for (RoundPlan.StartLine line : hole.startLines()) {
            if (line.balls() != RoundPlan.BallsGo.AS_USUAL) {
                out.add(String.format(
                        Locale.ROOT,
                        "%.0f yd %s today: aim %s%s",
                        Math.abs(yards(line.beyondMetres())),
                        side(line.beyondMetres()),
                        RoundPlan.toward(line.landmark()),
                        offset(line.offsetMetres())));
            }
        }
        return out.isEmpty() ? Optional.empty() : Optional.of("if your balls go " + String.join("; if ", out));
    }

    private static String offset(double metres) {
        double yards = yards(metres);
        return Math.abs(yards) < LEAST_YARDS
                ? ""
                : String.format(Locale.ROOT, " (%.0f yd %s)", Math.abs(yards), side(metres));
    }

    /** How far the finish lies beside the start line, yards, + right. */
    private static double beside(RoundPlan.ShotPlan s) {
        double turn = s.from().bearingTo(s.start().finish())
                - s.from().bearingTo(s.start().spot());
        return yards(s.aimMetres()) * Math.sin(turn);
    }

    private static String number(double clubs) {
        return clubs == Math.rint(clubs) ? String.format(Locale.ROOT, "%.0f", clubs) : (int) clubs + " 1/2";
    }

    private static String side(double x) {
        return x < 0 ? "left" : "right";
    }

    private static double yards(double metres) {
        return Distance.ofMetres(metres).yards();
    }
}
