package loopwright.player;

import static loopwright.player.PriorTable.at;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import loopwright.putting.PuttingSkillPrior;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;

/**
 * What is assumed of a player before a ball is seen: length from what he says of himself, spread, mishits, short game and
 * putting from his level. Every number is in {@link PriorTable} and {@link MishitTable}, those of putting in
 * {@link PuttingSkillPrior}.
 */
public final class PlayerPrior {
    private final double level;
    private final Player.Hand hand;
    private final @Nullable Distance driverCarry;
    private final @Nullable Distance sevenIronCarry;
    private final List<Club> bag;
    private final double biasRadians;
    private final double lostBalls;

    private PlayerPrior(
            double level,
            Player.Hand hand,
            @Nullable Distance driverCarry,
            @Nullable Distance sevenIronCarry,
            List<Club> bag,
            double biasRadians,
            double lostBalls) {
        this.level = level;
        this.hand = hand;
        this.driverCarry = driverCarry;
        this.sevenIronCarry = sevenIronCarry;
        this.bag = List.copyOf(bag);
        this.biasRadians = biasRadians;
        this.lostBalls = lostBalls;
    }

    /** The prior of a level (average 18-hole score, 60 to 130), with the length and bag usual there. */
    public static PlayerPrior of(double level, Player.Hand hand) {
        if (!(level >= 60 && level <= 130)) {
            throw new IllegalArgumentException("a level is an average score between 60 and 130, not " + level);
        }
        return new PlayerPrior(level, hand, null, null, List.of(), 0, -1);
    }

    public PlayerPrior withDriverCarry(Distance carry) {
        return new PlayerPrior(level, hand, positive(carry), sevenIronCarry, bag, biasRadians, lostBalls);
    }

    public PlayerPrior withSevenIronCarry(Distance carry) {
        return new PlayerPrior(level, hand, driverCarry, positive(carry), bag, biasRadians, lostBalls);
    }

    /** With these clubs only; the putter may be named or left out. */
    public PlayerPrior withBag(List<Club> clubs) {
        if (clubs.stream().allMatch(club -> club.family() == Club.Family.PUTTER)) {
            throw new IllegalArgumentException("a bag needs at least one club besides the putter");
        }
        return new PlayerPrior(level, hand, driverCarry, sevenIronCarry, clubs, biasRadians, lostBalls);
    }

    /** Whose balls usually miss to the right (or left) of where he aims. */
    public PlayerPrior withUsualMiss(boolean right) {
        double bias = right ? PriorTable.USUAL_MISS_BIAS : -PriorTable.USUAL_MISS_BIAS;
        return new PlayerPrior(level, hand, driverCarry, sevenIronCarry, bag, bias, lostBalls);
    }

    /** Who loses so many balls a round. */
    public PlayerPrior withLostBalls(double perRound) {
        if (!(perRound >= 0 && perRound <= 30)) {
            throw new IllegalArgumentException("lost balls a round are 0 to 30, not " + perRound);
        }
        return new PlayerPrior(level, hand, driverCarry, sevenIronCarry, bag, biasRadians, perRound);
    }

    public double level() {
        return level;
    }

    public Player.Hand hand() {
        return hand;
    }

    /** The same with every length multiplied. */
    PlayerPrior withLengthTimes(double factor) {
        Distance driver = Distance.ofMetres(trend().driverCarryMetres() * factor);
        Distance seven = sevenIronCarry == null ? null : Distance.ofMetres(sevenIronCarry.metres() * factor);
        return new PlayerPrior(level, hand, driver, seven, bag, biasRadians, lostBalls);
    }

    boolean lengthIsStated() {
        return driverCarry != null || sevenIronCarry != null;
    }

    /** The assumed player, all of it marked so. */
    public Player player(String name) {
        List<Swing> swings = new ArrayList<>();
        for (Club club : bag()) {
            if (club.family() != Club.Family.PUTTER) {
                swings.addAll(swings(club));
            }
        }
        swings.sort(Comparator.comparingDouble((Swing s) -> s.pattern().carryMetres())
                .reversed());
        return new Player(name, hand, level, swings, touchShots(swings), PuttingSkillPrior.ofLevel(level), lostBalls);
    }

    /** The clubs of the bag, without partial efforts. */
    public List<Club> bag() {
        return bag.isEmpty() ? ClubTable.usualBag(trend().driverCarryMetres()) : bag;
    }

    boolean bagIsStated() {
        return !bag.isEmpty();
    }

    /** The pattern assumed of a club and effort, in the bag or not. */
    public ShotPattern pattern(Club club, String effort) {
        double carry = carryMetres(club) * effortCarry(effort);
        double spread = effortSpread(effort);
        double whole = directionSdRadians(club) * spread;
        return new ShotPattern(
                carry,
                carry * carrySdShare(club) * spread,
                biasRadians,
                whole * MishitTable.solidDirectionShare(club, level),
                0,
                trend().runMetres(club, carry),
                trend().apexMetres(club, carry),
                trend().descentRadians(club),
                MishitTable.mishits(club, level, whole, hand));
    }

    /** Direction SD of the whole pattern, bad shots included. */
    double directionSdRadians(Club club) {
        double driver = at(level, PriorTable.DRIVER_DIRECTION_AT_80, PriorTable.DRIVER_DIRECTION_AT_100, 0);
        return driver
                * at(level, PriorTable.DIRECTION_OF_TOUR, PriorTable.DIRECTION_OF_90, ClubTable.loftDegrees(club));
    }

    private double carrySdShare(Club club) {
        return at(level, PriorTable.CARRY_SD_OF_TOUR, PriorTable.CARRY_SD_OF_90, ClubTable.loftDegrees(club));
    }

    BagTrend trend() {
        if (driverCarry != null) {
            return new BagTrend(driverCarry.metres());
        }
        if (sevenIronCarry != null) {
            return BagTrend.through(ClubTable.find("7-iron").orElseThrow(), sevenIronCarry.metres());
        }
        double drive = at(level, PriorTable.DRIVE_AT_80_METRES, PriorTable.DRIVE_AT_100_METRES, 0);
        return new BagTrend(drive - PriorTable.DRIVER_RUN_METRES);
    }

    /**
     * The trend's carry; where driver and 7-iron were both stated, bent between them: clubs from the 7-iron down move with
     * it, longer ones by the share of the way from the driver to it.
     */
    private double carryMetres(Club club) {
        BagTrend trend = trend();
        double carry = trend.carryMetres(club);
        if (driverCarry == null || sevenIronCarry == null) {
            return carry;
        }
        double seven = trend.carryMetres(ClubTable.find("7-iron").orElseThrow());
        double way = (trend.driverCarryMetres() - carry) / (trend.driverCarryMetres() - seven);
        double bend = Math.log(sevenIronCarry.metres() / seven);
        return carry * Math.exp(bend * Math.min(1, Math.max(0, way)));
    }

    private List<Swing> swings(Club club) {
        List<Swing> out = new ArrayList<>();
        out.add(assumed(club, Swing.FULL));
        if (club.family() == Club.Family.WEDGE) {
            out.add(assumed(club, PriorTable.THREE_QUARTER));
            out.add(assumed(club, PriorTable.HALF));
        }
        return out;
    }

    private Swing assumed(Club club, String effort) {
        return new Swing(club, effort, pattern(club, effort), Evidence.ASSUMED);
    }

    private static double effortCarry(String effort) {
        return switch (effort) {
            case PriorTable.THREE_QUARTER -> PriorTable.THREE_QUARTER_CARRY;
            case PriorTable.HALF -> PriorTable.HALF_CARRY;
            default -> 1;
        };
    }

    private static double effortSpread(String effort) {
        return switch (effort) {
            case PriorTable.THREE_QUARTER -> PriorTable.THREE_QUARTER_SPREAD;
            case PriorTable.HALF -> PriorTable.HALF_SPREAD;
            default -> 1;
        };
    }

    private List<TouchShot> touchShots(List<Swing> swings) {
        double shortestFull = swings.stream()
                .filter(Swing::isFull)
                .mapToDouble(s -> s.pattern().carryMetres())
                .min()
                .orElseThrow();
        double reach = PriorTable.PITCH_LONGEST_SHARE * shortestFull;
        double chip = Math.toRadians(at(level, PriorTable.CHIP_DIRECTION));
        double pitch = Math.toRadians(at(level, PriorTable.PITCH_DIRECTION));
        double sand = Math.toRadians(at(level, PriorTable.SAND_DIRECTION));
        return List.of(
                new TouchShot(
                        TouchShot.Kind.CHIP,
                        1,
                        Math.min(PriorTable.CHIP_LONGEST_METRES, reach),
                        at(level, PriorTable.CHIP_FLOOR),
                        at(level, PriorTable.CHIP_SHARE),
                        chip,
                        0.65,
                        MishitTable.chip(level, chip),
                        Evidence.ASSUMED),
                new TouchShot(
                        TouchShot.Kind.PITCH,
                        6,
                        Math.max(12, Math.min(PriorTable.PITCH_LONGEST_METRES, reach)),
                        at(level, PriorTable.PITCH_FLOOR),
                        at(level, PriorTable.PITCH_SHARE),
                        pitch,
                        0.25,
                        MishitTable.pitch(level, pitch),
                        Evidence.ASSUMED),
                new TouchShot(
                        TouchShot.Kind.BUNKER_SHOT,
                        3,
                        Math.max(10, Math.min(PriorTable.SAND_LONGEST_METRES, reach)),
                        at(level, PriorTable.SAND_FLOOR),
                        at(level, PriorTable.SAND_SHARE),
                        sand,
                        0.4,
                        MishitTable.sand(level, sand),
                        Evidence.ASSUMED));
    }

    private static Distance positive(Distance carry) {
        if (!(carry.metres() > 0)) {
            throw new IllegalArgumentException("a carry is above zero, not " + carry.metres() + " m");
        }
        return carry;
    }
}
