package loopwright.cli;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import loopwright.action.UserFault;
import loopwright.player.ClubTable;
import loopwright.player.Habit;
import loopwright.units.Distance;
import picocli.CommandLine.Option;

/** How the player plays without a plan, as options of a verb. */
final class HabitOptions {
    private static final double LONGEST_LAY_UP_YARDS = 250;

    @Option(
            names = "--tee-club",
            paramLabel = "HOLES=CLUB",
            description =
                    "His usual tee club on short-par-fours, par-fours or par-fives (the longest); may be repeated.")
    private Map<String, String> teeClubs = new LinkedHashMap<>();

    @Option(
            names = "--aim",
            paramLabel = "flag|middle",
            description = "Where he aims once the green is in reach (flag).")
    private String aim = "flag";

    @Option(
            names = "--chip",
            paramLabel = "ground|always-chip|always-pitch",
            description = "How he plays from just off the green (ground: a chip where the ground is clear).")
    private String chip = "ground";

    @Option(
            names = "--lay-up",
            paramLabel = "YARDS",
            description =
                    "The distance he likes to leave where he cannot reach the green (0: as far as he can hit it).")
    private double layUp;

    Habit habit() {
        if (!(layUp >= 0 && layUp <= LONGEST_LAY_UP_YARDS)) {
            throw new UserFault(
                    "--lay-up " + UserFault.typed(layUp) + " is no distance to leave; 0 to 250 yd is accepted.");
        }
        return new Habit(clubs(), aimed(), chipped(), Distance.ofYards(layUp).metres());
    }

    private Map<Habit.HoleKind, String> clubs() {
        Map<Habit.HoleKind, String> out = new EnumMap<>(Habit.HoleKind.class);
        teeClubs.forEach((holes, club) -> out.put(kind(holes), club(club)));
        return out;
    }

    private static Habit.HoleKind kind(String holes) {
        return switch (holes.toLowerCase(Locale.ROOT)) {
            case "short-par-fours" -> Habit.HoleKind.SHORT_PAR_FOUR;
            case "par-fours" -> Habit.HoleKind.PAR_FOUR;
            case "par-fives" -> Habit.HoleKind.PAR_FIVE;
            default ->
                throw new UserFault(
                        "--tee-club " + holes + " is unknown; short-par-fours, par-fours or par-fives is accepted.");
        };
    }

    private static String club(String text) {
        return ClubTable.find(text)
                .orElseThrow(() -> new UserFault("--tee-club: \"" + text.strip()
                        + "\" is no club; driver, 3-wood, 4-hybrid or 7-iron are accepted."))
                .name();
    }

    private Habit.Aim aimed() {
        return switch (aim) {
            case "flag" -> Habit.Aim.FLAG;
            case "middle" -> Habit.Aim.MIDDLE_OF_GREEN;
            default -> throw new UserFault("--aim " + aim + " is unknown; flag or middle is accepted.");
        };
    }

    private Habit.ChipChoice chipped() {
        return switch (chip) {
            case "ground" -> Habit.ChipChoice.GROUND_WHERE_CLEAR;
            case "always-chip" -> Habit.ChipChoice.ALWAYS_CHIP;
            case "always-pitch" -> Habit.ChipChoice.ALWAYS_PITCH;
            default ->
                throw new UserFault("--chip " + chip + " is unknown; ground, always-chip or always-pitch is accepted.");
        };
    }
}
