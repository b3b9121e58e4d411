package loopwright.adapter.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loopwright.ground.Surface;
import loopwright.player.Mishit;
import loopwright.player.TouchBall;
import loopwright.player.TouchShot;
import loopwright.putting.Cup;
import loopwright.putting.LoggedPutt;
import loopwright.putting.LoggedPutt.Side;
import loopwright.units.Distance;

/**
 * Reads the rows of a session that are chips, pitches, bunker shots and putts: how far from the hole ({@code to_hole_yd},
 * {@code to_hole_ft} ...), whether holed, how far it stopped ({@code leave_ft} ...), what went wrong ({@code mishit}), the
 * lie; of putts the side of the miss ({@code miss}) and whether the line was known to be straight ({@code drill}).
 */
final class ShortRows {
    private static final Map<String, TouchShot.Kind> SHOTS = Map.of(
            "chip", TouchShot.Kind.CHIP,
            "pitch", TouchShot.Kind.PITCH,
            "bunker shot", TouchShot.Kind.BUNKER_SHOT,
            "bunker", TouchShot.Kind.BUNKER_SHOT,
            "sand", TouchShot.Kind.BUNKER_SHOT);
    private static final Map<String, Boolean> YES_OR_NO = Map.of(
            "yes", true, "y", true, "1", true, "true", true, "no", false, "n", false, "0", false, "false", false);
    private static final Map<String, Surface> LIES = Map.of(
            "fairway", Surface.FAIRWAY,
            "grass", Surface.FAIRWAY,
            "mat", Surface.FAIRWAY,
            "good", Surface.FAIRWAY,
            "rough", Surface.ROUGH,
            "deep rough", Surface.DEEP_ROUGH,
            "sand", Surface.BUNKER,
            "bunker", Surface.BUNKER);
    private static final Map<String, Mishit.Kind> MISHITS = Map.of(
            "fat", Mishit.Kind.FAT,
            "thin", Mishit.Kind.THIN,
            "bladed", Mishit.Kind.BLADED,
            "left in sand", Mishit.Kind.LEFT_IN_SAND,
            "left in", Mishit.Kind.LEFT_IN_SAND);
    private static final Map<String, Side> SIDES =
            Map.of("short", Side.SHORT, "long", Side.LONG, "past", Side.LONG, "left", Side.LEFT, "right", Side.RIGHT);
    private static final Distance LONGEST = Distance.ofYards(109);

    final List<TouchBall> touch = new ArrayList<>();
    final List<LoggedPutt> putts = new ArrayList<>();
    /** Rows in which nothing was filled in. */
    int empty;

    static boolean isShort(String club) {
        return SHOTS.containsKey(word(club)) || isPutt(club);
    }

    static boolean isPutt(String club) {
        return word(club).equals("putter") || word(club).equals("putt");
    }

    /** True if a table says how far short shots and putts were played from. */
    static boolean areIn(CsvTable table) {
        return table.columns().keySet().stream().anyMatch(c -> c.startsWith("to_hole_"));
    }

    static Stream<String> columns() {
        return Stream.concat(
                Stream.of("holed", "mishit", "miss", "drill"),
                RoundWords.UNITS.keySet().stream().flatMap(u -> Stream.of("to_hole_" + u, "leave_" + u)));
    }

    /** Reads one row; what is wrong with it is added to the problems. */
    void read(CsvRow row, String club, RowReader cells) {
        Optional<Distance> toHole = cells.distance("to_hole", LONGEST);
        boolean holed = cells.word("holed", YES_OR_NO, "yes or no").orElse(false);
        Optional<Distance> leave = cells.distance("leave", LONGEST);
        Optional<Side> side = cells.word("miss", SIDES, "short, long, left or right");
        Optional<Mishit.Kind> mishit = cells.word("mishit", MISHITS, "fat, thin, bladed or left in sand");
        if (row.cell("holed").isEmpty() && leave.isEmpty() && mishit.isEmpty() && side.isEmpty()) {
            empty++;
            return;
        }
        double least = isPutt(club) ? 2 * Cup.RADIUS_METRES : TouchBall.SHORTEST_METRES;
        if (toHole.isEmpty() || toHole.get().metres() < least) {
            String column = cells.present(distanceColumns());
            cells.reject(column, row.cell(column), "a distance to the hole, up to 109 yd");
        }
        if (holed && (leave.isPresent() || mishit.isPresent() || side.isPresent())) {
            cells.reject("holed", row.cell("holed"), "right beside a leave, a miss or a mishit; a holed ball has none");
        }
        if (cells.problem().isEmpty() && toHole.isPresent()) {
            if (isPutt(club)) {
                putts.add(putt(toHole.get(), holed, leave, side, cells.yes("drill")));
            } else {
                touch(row, club, cells, toHole.get(), holed, leave, mishit);
            }
        }
    }

    private static LoggedPutt putt(
            Distance toHole, boolean holed, Optional<Distance> leave, Optional<Side> side, boolean drill) {
        OptionalDouble left = leave.isPresent() && leave.get().metres() > Cup.RADIUS_METRES
                ? OptionalDouble.of(leave.get().metres())
                : OptionalDouble.empty();
        return new LoggedPutt(toHole.metres(), holed, left, side.orElse(Side.NOT_NOTED), drill);
    }

    private void touch(
            CsvRow row,
            String club,
            RowReader cells,
            Distance toHole,
            boolean holed,
            Optional<Distance> leave,
            Optional<Mishit.Kind> mishit) {
        TouchShot.Kind kind = SHOTS.getOrDefault(word(club), TouchShot.Kind.CHIP);
        boolean sand = kind == TouchShot.Kind.BUNKER_SHOT;
        Surface usual = sand ? Surface.BUNKER : Surface.FAIRWAY;
        Surface lie =
                cells.word("lie", LIES, "fairway, rough, deep rough or sand").orElse(usual);
        if (sand != (lie == Surface.BUNKER)) {
            cells.reject(
                    "lie",
                    row.cell("lie"),
                    sand
                            ? "sand, where a bunker shot is played"
                            : "off the sand, where a " + word(club) + " is played");
            return;
        }
        if (cells.problem().isEmpty()) {
            OptionalDouble left = leave.map(d -> OptionalDouble.of(d.metres())).orElse(OptionalDouble.empty());
            touch.add(new TouchBall(kind, toHole.metres(), lie, holed, left, mishit.map(m -> ofKind(m, sand))));
        }
    }

    /** A fat ball in sand stays there, a thin one is bladed; on grass a bladed one is thin. */
    private static Mishit.Kind ofKind(Mishit.Kind said, boolean sand) {
        return switch (said) {
            case FAT, LEFT_IN_SAND -> sand ? Mishit.Kind.LEFT_IN_SAND : Mishit.Kind.FAT;
            default -> sand ? Mishit.Kind.BLADED : Mishit.Kind.THIN;
        };
    }

    private static List<String> distanceColumns() {
        return RoundWords.UNITS.keySet().stream().map(u -> "to_hole_" + u).toList();
    }

    private static String word(String club) {
        return club.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
    }
}
