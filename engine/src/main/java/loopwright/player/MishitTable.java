package loopwright.player;

import static loopwright.player.Mishit.Kind.BLADED;
import static loopwright.player.Mishit.Kind.FAT;
import static loopwright.player.Mishit.Kind.HEEL;
import static loopwright.player.Mishit.Kind.LEFT_IN_SAND;
import static loopwright.player.Mishit.Kind.THIN;
import static loopwright.player.Mishit.Kind.TOE;
import static loopwright.player.Mishit.Kind.TOPPED;

import java.util.List;

/**
 * The shape of mishits: what share of a family's mishits each kind is, what it leaves of the carry, and where it goes. All
 * assumed (no public table exists); heel and toe are held near the whole pattern's width, so that it is still the solid
 * strikes that miss fairways as often as published; directions are in units of the club's whole direction SD, + toward the heel's side,
 * which is right for a right-handed player.
 */
final class MishitTable {

    /** A kind's share of the mishits, carry factor and SD, direction and SD in units of the direction SD. */
    record Shape(
            Mishit.Kind kind,
            double share,
            double carry,
            double carrySd,
            double direction,
            double directionSd,
            boolean low) {
        Mishit at(double familyRate, double directionUnitRadians, double side) {
            return new Mishit(
                    kind,
                    familyRate * share,
                    carry,
                    carrySd,
                    side * direction * directionUnitRadians,
                    directionSd * directionUnitRadians,
                    low);
        }
    }

    private static final List<Shape> DRIVER = List.of(
            new Shape(HEEL, .35, .86, .08, 1.2, 1, false),
            new Shape(TOE, .25, .88, .08, -1.1, 1, false),
            new Shape(THIN, .25, .74, .12, 0, 1, true),
            new Shape(TOPPED, .15, .22, .12, 0, 1.2, true));

    private static final List<Shape> WOOD = List.of(
            new Shape(THIN, .35, .78, .12, 0, 1.1, true),
            new Shape(FAT, .25, .55, .16, 0, 1.2, false),
            new Shape(HEEL, .15, .85, .08, 1.2, 1, false),
            new Shape(TOPPED, .25, .22, .12, 0, 1.3, true));

    private static final List<Shape> IRON = List.of(
            new Shape(FAT, .45, .62, .15, 0, 1.2, false),
            new Shape(THIN, .35, .84, .14, 0, 1.1, true),
            new Shape(TOE, .12, .84, .08, 1, 1, false),
            new Shape(TOPPED, .08, .25, .12, 0, 1.3, true));

    private static final List<Shape> WEDGE =
            List.of(new Shape(FAT, .55, .55, .17, 0, 1.2, false), new Shape(THIN, .45, 1.15, .18, 0, 1.2, true));

    /**
     * Assumed: solid strikes are no straighter than this share of the whole pattern. Reached from about level 100 (woods) and 120
     * (driver) on; the whole is then wider than the published line.
     */
    private static final double LEAST_SOLID_SHARE = 0.75;

    private MishitTable() {}

    static List<Shape> shapes(Club.Family family) {
        return switch (family) {
            case DRIVER -> DRIVER;
            case WOOD, HYBRID -> WOOD;
            case IRON -> IRON;
            case WEDGE, PUTTER -> WEDGE;
        };
    }

    /** Share of swings that a family mishits at a level. */
    static double familyRate(Club.Family family, double level) {
        return PriorTable.at(
                level,
                switch (family) {
                    case DRIVER -> PriorTable.DRIVER_MISHITS;
                    case WOOD -> PriorTable.WOOD_MISHITS;
                    case HYBRID -> PriorTable.HYBRID_MISHITS;
                    case IRON -> PriorTable.IRON_MISHITS;
                    case WEDGE, PUTTER -> PriorTable.WEDGE_MISHITS;
                });
    }

    private static double rate(Club club, double level) {
        return Math.min(PriorTable.MOST_PRIOR_MISHITS, familyRate(club.family(), level) * clubFactor(club));
    }

    /** A club's rate relative to its family's: longer irons are mishit more. */
    static double clubFactor(Club club) {
        if (club.family() != Club.Family.IRON) {
            return 1;
        }
        double middle = ClubTable.loftDegrees(new Club("7-iron", Club.Family.IRON));
        double factor = 1 + PriorTable.MISHIT_SLOPE_PER_DEGREE * (middle - ClubTable.loftDegrees(club));
        return Math.max(0.7, Math.min(1.4, factor));
    }

    static List<Mishit> mishits(Club club, double level, double directionUnitRadians, Player.Hand hand) {
        double rate = rate(club, level);
        double side = hand == Player.Hand.RIGHT ? 1 : -1;
        return shapes(club.family()).stream()
                .map(shape -> shape.at(rate, directionUnitRadians, side))
                .toList();
    }

    /**
     * Direction SD of the solid component in units of the whole pattern's: variance of the whole = sum over components of
     * rate * (mean^2 + sd^2) - (overall mean)^2, solved for the solid share.
     */
    static double solidDirectionShare(Club club, double level) {
        double rate = rate(club, level);
        double second = 0;
        double mean = 0;
        for (Shape s : shapes(club.family())) {
            second += rate * s.share() * (s.direction() * s.direction() + s.directionSd() * s.directionSd());
            mean += rate * s.share() * s.direction();
        }
        return Math.sqrt(Math.max(LEAST_SOLID_SHARE * LEAST_SOLID_SHARE, (1 + mean * mean - second) / (1 - rate)));
    }

    static List<Mishit> chip(double level, double directionSd) {
        return List.of(
                fat(PriorTable.at(level, PriorTable.CHIP_FAT), directionSd),
                thin(PriorTable.at(level, PriorTable.CHIP_THIN), directionSd));
    }

    static List<Mishit> pitch(double level, double directionSd) {
        return List.of(
                fat(PriorTable.at(level, PriorTable.PITCH_FAT), directionSd),
                thin(PriorTable.at(level, PriorTable.PITCH_THIN), directionSd));
    }

    static List<Mishit> sand(double level, double directionSd) {
        return List.of(
                new Mishit(
                        LEFT_IN_SAND,
                        PriorTable.at(level, PriorTable.SAND_LEFT_IN),
                        .12,
                        .08,
                        0,
                        2 * directionSd,
                        true),
                new Mishit(BLADED, PriorTable.at(level, PriorTable.SAND_BLADED), 2.4, .6, 0, 1.5 * directionSd, true));
    }

    private static Mishit fat(double rate, double directionSd) {
        return new Mishit(FAT, rate, .35, .15, 0, 1.5 * directionSd, true);
    }

    private static Mishit thin(double rate, double directionSd) {
        return new Mishit(THIN, rate, 1.8, .35, 0, 1.5 * directionSd, true);
    }
}
