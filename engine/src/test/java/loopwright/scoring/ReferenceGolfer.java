package loopwright.scoring;

import java.util.List;
import loopwright.player.Mishit;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.ShotPattern;
import loopwright.player.Swing;
import loopwright.units.Distance;

/**
 * The golfers of the realism checks: what the prior says of a level, with the driver of Broadie and Ko 2009 that stands in it
 * (250.6 yd and 5.5 degrees at 80, 225 yd and 7.9 degrees at 100), and changed as that paper changes them.
 *
 * <p>Fixed before any result: "20 yd longer" multiplies all full and partial swings by the driver's gain in total length; "so many
 * degrees straighter" multiplies every direction of all swings, mishits included, by the driver's share. Short game and putting
 * stay.
 */
final class ReferenceGolfer {
    private ReferenceGolfer() {}

    static Player of(double level) {
        double driveYards = 250.6 + (level - 80) / 20 * (225 - 250.6);
        return PlayerPrior.of(level, Player.Hand.RIGHT)
                .withDriverCarry(Distance.ofYards(driveYards - 20))
                .player("golfer of level " + level);
    }

    static Player longer(Player player, double metres) {
        double drive = player.swings().get(0).pattern().totalMetres();
        return with(player, (drive + metres) / drive, 1);
    }

    /** Straighter, where the whole pattern of his driver has this direction SD. */
    static Player straighter(Player player, double driverDegrees, double fewerDegrees) {
        return with(player, 1, (driverDegrees - fewerDegrees) / driverDegrees);
    }

    private static Player with(Player p, double length, double direction) {
        List<Swing> swings = p.swings().stream()
                .map(s -> new Swing(s.club(), s.effort(), with(s.pattern(), length, direction), s.evidence()))
                .toList();
        return new Player(p.name(), p.hand(), p.level(), swings, p.touchShots(), p.putting(), p.lostBallsPerRound());
    }

    private static ShotPattern with(ShotPattern p, double length, double direction) {
        List<Mishit> mishits = p.mishits().stream()
                .map(m -> new Mishit(
                        m.kind(),
                        m.rate(),
                        m.carryFactor(),
                        m.carryFactorSd(),
                        m.directionRadians() * direction,
                        m.directionSdRadians() * direction,
                        m.low()))
                .toList();
        return new ShotPattern(
                p.carryMetres() * length,
                p.carrySdMetres() * length,
                p.directionRadians() * direction,
                p.directionSdRadians() * direction,
                p.correlation(),
                p.runMetres() * length,
                p.apexMetres() * length,
                p.descentRadians(),
                mishits);
    }
}
