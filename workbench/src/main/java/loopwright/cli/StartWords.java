package loopwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.action.ReadLengths;
import loopwright.action.RoundPlan;
import loopwright.units.Distance;

/** How a ball is started, in words. */
final class StartWords {
    private static final double LEAST_METRES = 0.5 * Distance.METRES_PER_INCH;

    private final ReadLengths lengths;

    StartWords(ReadLengths lengths) {
        this.lengths = lengths;
    }

    /** Where start line and finish part, and what a head wind asks for; nothing where there is nothing to say. */
    List<String> of(RoundPlan.ShotPlan s) {
        List<String> out = new ArrayList<>();
        double spot = s.start().spotOffsetMetres();
        String beside = lengths.side(beside(s));
        if (Math.abs(spot) >= LEAST_METRES && !beside.isEmpty()) {
            out.add("start line: over a spot " + lengths.hand(Math.abs(spot)) + " " + side(spot)
                    + " of the line to the finish, two club-lengths ahead; it finishes " + beside
                    + " of the start line");
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
    Optional<String> otherLines(RoundPlan.HolePlan hole) {
        List<String> out = new ArrayList<>();
        for (RoundPlan.StartLine line : hole.startLines()) {
            if (line.balls() != RoundPlan.BallsGo.AS_USUAL) {
                out.add(lengths.far(Math.abs(line.beyondMetres())) + " " + side(line.beyondMetres()) + " today: aim "
                        + lengths.told(RoundPlan.toward(line.landmark()))
                        + lengths.bracketed(line.offsetMetres()));
            }
        }
        return out.isEmpty() ? Optional.empty() : Optional.of("if your balls go " + String.join("; if ", out));
    }

    /** How far the finish lies beside the start line, metres, + right. */
    private static double beside(RoundPlan.ShotPlan s) {
        double turn = s.from().bearingTo(s.start().finish())
                - s.from().bearingTo(s.start().spot());
        return s.aimMetres() * Math.sin(turn);
    }

    private static String number(double clubs) {
        return clubs == Math.rint(clubs) ? String.format(Locale.ROOT, "%.0f", clubs) : (int) clubs + " 1/2";
    }

    private static String side(double x) {
        return x < 0 ? "left" : "right";
    }
}
