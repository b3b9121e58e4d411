package loopwright.player;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The clubs of the trade: their names, families and usual lofts.
 *
 * <p>Lofts are those of ordinary modern sets (common practice, no source); they only place a club on the bag's trend, so
 * a degree more or less moves a missing club by two or three metres.
 */
public final class ClubTable {
    public static final Club DRIVER = new Club("driver", Club.Family.DRIVER);
    public static final Club PUTTER = new Club("putter", Club.Family.PUTTER);

    private static final Pattern NUMBERED = Pattern.compile("([1-9])[ -]?(w|wood|h|hybrid|i|iron)");
    private static final Pattern REVERSED = Pattern.compile("(wood|hybrid|iron)[ -]?([1-9])");
    private static final Pattern BY_LOFT =
            Pattern.compile("(4[4-9]|5\\d|6[0-4])([ -]?(deg|degrees|degree|°))?([ -]?wedge)?");

    /** Index is the number on the sole. */
    private static final double[] WOOD_LOFTS = {Double.NaN, 10.5, 12.5, 15, 16.5, 18, 19.5, 21, 22.5, 24};

    private static final double[] HYBRID_LOFTS = {Double.NaN, 15, 17, 19, 22, 25, 28, 31, 34, 37};
    private static final double[] IRON_LOFTS = {Double.NaN, 15, 18, 21, 24, 27, 30, 34, 38, 42};

    /** A full bag of fourteen for a swing of ordinary or high speed. */
    private static final List<String> LONG_BAG = List.of(
            "driver",
            "3-wood",
            "5-wood",
            "4-hybrid",
            "5-iron",
            "6-iron",
            "7-iron",
            "8-iron",
            "9-iron",
            "pitching wedge",
            "52-wedge",
            "56-wedge",
            "60-wedge",
            "putter");

    /** For a slow swing: woods and hybrids in place of long irons; a 6-iron beside the 6-hybrid would go as far. */
    private static final List<String> SHORT_BAG = List.of(
            "driver",
            "3-wood",
            "5-wood",
            "7-wood",
            "5-hybrid",
            "6-hybrid",
            "7-iron",
            "8-iron",
            "9-iron",
            "pitching wedge",
            "52-wedge",
            "56-wedge",
            "putter");

    /** Half a bag for a child or anyone as short: between more clubs nothing would be left (common practice, no source). */
    private static final List<String> HALF_BAG =
            List.of("driver", "5-wood", "5-hybrid", "7-iron", "9-iron", "pitching wedge", "56-wedge", "putter");

    private ClubTable() {}

    /** The club a player means by "driver", "7i", "7-iron", "PW", "56" and the like. */
    public static Optional<Club> find(String text) {
        String word = text.strip().toLowerCase(Locale.ROOT).replace('_', '-');
        return switch (word) {
            case "driver", "d", "dr", "1w", "1-wood" -> Optional.of(DRIVER);
            case "putter", "pt" -> Optional.of(PUTTER);
            case "pitching wedge", "pitching-wedge", "pw", "p" -> Optional.of(wedge("pitching wedge"));
            case "gap wedge", "gap-wedge", "gw", "aw" -> Optional.of(wedge("gap wedge"));
            case "sand wedge", "sand-wedge", "sw", "s" -> Optional.of(wedge("sand wedge"));
            case "lob wedge", "lob-wedge", "lw" -> Optional.of(wedge("lob wedge"));
            default -> findNumbered(word);
        };
    }

    /** The loft in degrees: the putter's is not used and reads 90. */
    static double loftDegrees(Club club) {
        return switch (club.family()) {
            case DRIVER -> 10.5;
            case WOOD -> WOOD_LOFTS[number(club)];
            case HYBRID -> HYBRID_LOFTS[number(club)];
            case IRON -> IRON_LOFTS[number(club)];
            case WEDGE -> wedgeLoft(club);
            case PUTTER -> 90;
        };
    }

    /** The clubs a player of this driver carry usually has: fourteen, or fewer where they would go as far. */
    static List<Club> usualBag(double driverCarryMetres) {
        List<String> names = driverCarryMetres < PriorTable.HALF_BAG_BELOW_METRES
                ? HALF_BAG
                : driverCarryMetres < PriorTable.SHORT_BAG_BELOW_METRES ? SHORT_BAG : LONG_BAG;
        return names.stream().map(name -> find(name).orElseThrow()).toList();
    }

    private static Optional<Club> findNumbered(String word) {
        Matcher numbered = NUMBERED.matcher(word);
        if (numbered.matches()) {
            return Optional.of(numbered(numbered.group(1), numbered.group(2)));
        }
        Matcher reversed = REVERSED.matcher(word);
        if (reversed.matches()) {
            return Optional.of(numbered(reversed.group(2), reversed.group(1)));
        }
        Matcher byLoft = BY_LOFT.matcher(word);
        return byLoft.matches() ? Optional.of(wedge(byLoft.group(1) + "-wedge")) : Optional.empty();
    }

    private static Club numbered(String number, String kind) {
        return switch (kind.charAt(0)) {
            case 'w' -> new Club(number + "-wood", Club.Family.WOOD);
            case 'h' -> new Club(number + "-hybrid", Club.Family.HYBRID);
            default -> new Club(number + "-iron", Club.Family.IRON);
        };
    }

    private static Club wedge(String name) {
        return new Club(name, Club.Family.WEDGE);
    }

    private static int number(Club club) {
        char first = club.name().charAt(0);
        if (first < '1' || first > '9') {
            throw new IllegalArgumentException("a wood, hybrid or iron is named by its number, not " + club.name());
        }
        return first - '0';
    }

    private static double wedgeLoft(Club club) {
        return switch (club.name()) {
            case "pitching wedge" -> 46;
            case "gap wedge" -> 50;
            case "sand wedge" -> 56;
            case "lob wedge" -> 60;
            default -> Double.parseDouble(club.name().substring(0, 2));
        };
    }
}
