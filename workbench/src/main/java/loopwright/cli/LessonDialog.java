package loopwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.action.PlayingLesson;
import loopwright.action.RoundPlan;
import loopwright.action.SolvedHole;
import loopwright.action.UserFault;
import loopwright.geo.Place;
import loopwright.player.ClubTable;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.Lie;
import loopwright.scoring.ShotRecord;
import loopwright.units.Distance;

/** One hole of a playing lesson at the terminal: what was meant, what the engine says, and whether it was struck so. */
final class LessonDialog {
    private static final String HELP = """
            Ball: t on the tee; else the distance to the hole in yards and how far beside the line of play, as 152 r10 or
            152 l4 (in line: 152); g12 on the green, 12 ft from the hole. One ! before it for each penalty stroke.
            h holed, n next hole, . ends the lesson. Aim: r10 or l5, yards beside the line of play; 0 is on it.""";
    private static final Pattern BALL =
            Pattern.compile("(!{0,3})(t|g?)(\\d{1,3}(?:\\.\\d)?)?(?:\\s+([rl])(\\d{1,3}))?");
    private static final Pattern ASIDE = Pattern.compile("([rl]?)(\\d{1,3})");
    private static final Map<String, Lie> LIES =
            Map.of("f", Lie.FAIRWAY, "r", Lie.ROUGH, "s", Lie.SAND, "g", Lie.GREEN, "x", Lie.RECOVERY);
    private static final int WAYS_SHOWN = 4;

    private final Asked asked;

    LessonDialog(Asked asked) {
        this.asked = asked;
    }

    /** What was typed of a hole; none if no stroke was; {@code ended} if the lesson is over. */
    record Played(Optional<HoleRecord> hole, boolean ended) {}

    /** A stroke that waits for where its ball went. */
    private record Waiting(
            Place ball, String club, Optional<Place> aim, Optional<Lie> finish, Optional<Boolean> asMeant) {}

    Played play(SolvedHole hole) {
        asked.say(String.format(
                Locale.ROOT,
                "%nHole %d, par %d, %.0f yd. ? explains.",
                hole.hole().number(),
                hole.hole().par(),
                hole.plan().lengthMetres() / Distance.METRES_PER_YARD));
        List<ShotRecord> shots = new ArrayList<>();
        Optional<Waiting> waiting = Optional.empty();
        while (true) {
            Optional<String> line = asked.line(waiting.isEmpty() ? "ball [t]: " : "where is the ball now: ");
            String typed = line.orElse(".").toLowerCase(Locale.ROOT);
            switch (typed) {
                case "?" -> asked.say(HELP);
                case ".", "n" -> {
                    return over(hole, shots, waiting, false, typed.equals("."));
                }
                case "h" -> {
                    return over(hole, shots, waiting, true, false);
                }
                default -> {
                    try {
                        Ball ball = ball(hole, typed.isEmpty() ? "t" : typed);
                        Waiting next = stroke(hole, ball); // a ball that cannot lie there changes nothing
                        waiting.ifPresent(w -> shots.add(shot(hole, w, ball.penalties())));
                        waiting = Optional.of(next);
                    } catch (UserFault fault) {
                        asked.say("  " + fault.getMessage());
                    }
                }
            }
        }
    }

    private static Played over(
            SolvedHole hole, List<ShotRecord> shots, Optional<Waiting> waiting, boolean holed, boolean ended) {
        waiting.ifPresent(w -> shots.add(shot(hole, w, 0)));
        return new Played(
                shots.isEmpty() ? Optional.empty() : Optional.of(PlayingLesson.hole(hole, shots, holed)), ended);
    }

    private static ShotRecord shot(SolvedHole hole, Waiting w, int penalties) {
        return PlayingLesson.shot(hole, w.ball(), w.club(), w.aim(), w.finish(), penalties, w.asMeant());
    }

    private record Ball(Place place, int penalties, boolean onGreen) {}

    private static Ball ball(SolvedHole hole, String typed) {
        Matcher m = BALL.matcher(typed);
        if (!m.matches() || (m.group(3) == null) != "t".equals(m.group(2))) {
            throw new UserFault("\"" + typed + "\" is no ball such as t, 152, 152 r10 or g12; ? explains.");
        }
        int penalties = String.valueOf(m.group(1)).length();
        if ("t".equals(m.group(2))) {
            return new Ball(hole.plan().tee(), penalties, false);
        }
        boolean green = "g".equals(m.group(2));
        double length = Double.parseDouble(String.valueOf(m.group(3)))
                * (green ? Distance.METRES_PER_FOOT : Distance.METRES_PER_YARD);
        double right = m.group(5) == null ? 0 : aside(String.valueOf(m.group(4)), String.valueOf(m.group(5)));
        return new Ball(hole.placeAt(length, right), penalties, green);
    }

    private static double aside(String side, String yards) {
        double metres = Double.parseDouble(yards) * Distance.METRES_PER_YARD;
        return side.equals("l") ? -metres : metres;
    }

    private Waiting stroke(SolvedHole hole, Ball ball) {
        if (ball.onGreen()) {
            return new Waiting(ball.place(), "putter", Optional.empty(), Optional.empty(), Optional.empty());
        }
        SolvedHole.Spot spot = hole.at(ball.place());
        String club = club(spot);
        Place aim = aim(hole, ball.place(), club);
        Optional<Lie> finish = asked.line("finish (f r s g x): ").map(LIES::get);
        options(hole, spot, club, aim);
        Optional<Boolean> asMeant = asked.line("play it. struck as meant (y n): ")
                .filter(a -> !a.isEmpty())
                .map(a -> a.toLowerCase(Locale.ROOT).startsWith("y"));
        return new Waiting(ball.place(), club, Optional.of(aim), finish, asMeant);
    }

    private String club(SolvedHole.Spot spot) {
        List<String> clubs =
                spot.ways().stream().map(RoundPlan.Alternative::club).toList();
        while (true) {
            String typed = asked.line("club: ").orElse(clubs.get(0));
            String name = ClubTable.find(typed).map(c -> c.name()).orElse(typed);
            Optional<String> found = clubs.stream()
                    .filter(c -> c.equalsIgnoreCase(name) || c.equalsIgnoreCase(typed))
                    .findFirst();
            if (found.isPresent()) {
                return found.get();
            }
            asked.say("  \"" + typed + "\" cannot be played here; one of " + String.join(", ", clubs) + ".");
        }
    }

    private Place aim(SolvedHole hole, Place ball, String club) {
        while (true) {
            String typed =
                    asked.line("aim, yards beside the line of play [0]: ").orElse("");
            Matcher m = ASIDE.matcher(typed.isEmpty() ? "0" : typed.toLowerCase(Locale.ROOT));
            if (m.matches()) {
                return hole.aimBeside(ball, club, aside(String.valueOf(m.group(1)), String.valueOf(m.group(2))));
            }
            asked.say("  \"" + typed + "\" is no aim such as r10, l5 or 0.");
        }
    }

    private void options(SolvedHole hole, SolvedHole.Spot spot, String club, Place aim) {
        SolvedHole.Aimed yours = hole.aimed(spot.ball(), club, aim);
        asked.say(String.format(
                Locale.ROOT,
                "  yours: %s %s, %.2f strokes to hole out",
                club,
                beside(yours.offsetMetres()),
                yours.expected()));
        spot.ways().stream()
                .limit(WAYS_SHOWN)
                .forEach(w -> asked.say(String.format(
                        Locale.ROOT,
                        "  %s %s: %.2f",
                        w.club(),
                        beside(w.offsetMetres()),
                        spot.best().expected() + w.cost())));
    }

    private static String beside(double metres) {
        double yards = metres / Distance.METRES_PER_YARD;
        return Math.abs(yards) < 0.5
                ? "on the line"
                : String.format(Locale.ROOT, "%.0f yd %s of the line", Math.abs(yards), yards < 0 ? "left" : "right");
    }
}
