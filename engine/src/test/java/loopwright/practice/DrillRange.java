package loopwright.practice;

import java.util.random.RandomGenerator;
import loopwright.player.DayEffect;
import loopwright.player.Landing;
import loopwright.player.LieEffect;
import loopwright.player.Player;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelPutt;

/** Plays drills ball by ball with fresh draws; counts points by where the ball is, written independently of the integrals. */
final class DrillRange {
    private final Player usual;
    private final DayEffect days;
    private final GreenSpeed speed;
    private final RandomGenerator random;

    DrillRange(Player usual, DayEffect days, GreenSpeed speed, RandomGenerator random) {
        this.usual = usual;
        this.days = days;
        this.speed = speed;
        this.random = random;
    }

    int play(Drill drill) {
        Player today = usual.on(days.draw(random));
        int points = 0;
        for (Station station : drill.stations()) {
            for (int i = 0; i < station.tries(); i++) {
                points += play(station, today);
            }
        }
        return points;
    }

    private int play(Station station, Player today) {
        if (station instanceof PuttStation putt) {
            return putt(putt, today) ? 1 : 0;
        }
        if (station instanceof ShotStation shot) {
            return shot(shot, today);
        }
        return upAndDown((UpAndDownStation) station, today) ? 1 : 0;
    }

    private boolean putt(PuttStation s, Player today) {
        double z = random.nextGaussian();
        double pace = random.nextGaussian();
        LevelPutt putt = LevelPutt.on(speed, today.putting());
        return switch (s.task()) {
            case HOLE -> putt.play(s.metres(), 0.305, z, pace) == 0;
            case GATE -> Math.abs(s.metres() * Math.sin(today.putting().startLineSdRadians() * z)) < 0.0107;
            case PAST -> {
                double roll = (s.metres() + 0.457) * (1 + today.putting().paceSd() * pace);
                double past = roll * Math.cos(putt.directionSdRadians() * z) - s.metres();
                yield putt.play(s.metres(), 0.457, z, pace) == 0 || (past >= 0 && past <= 0.914);
            }
        };
    }

    private int shot(ShotStation s, Player today) {
        StrikeModel strikes = s.shot().strikes(today, s.metres());
        Landing ball = hit(s.shot(), strikes, s.intendedMetres(strikes));
        double target = s.targetMetres(strikes);
        int points = 0;
        for (Zone zone : s.zones()) {
            double gone = ball.carryMetres + (zone.kind() == Zone.Kind.LANDS ? 0 : ball.runMetres);
            double forward = gone * Math.cos(ball.directionRadians);
            double aside = Math.abs(gone * Math.sin(ball.directionRadians));
            boolean scores = switch (zone.kind()) {
                case INSIDE, LANDS -> Math.hypot(forward - target, aside) <= zone.metres();
                case CORRIDOR -> aside <= zone.metres() / 2 && gone >= 0.6 * target && forward > 0;
                case HALF -> aside <= zone.metres() / 2 && Math.abs(forward - target) <= zone.depthMetres() / 2;
                case OUT -> gone >= 0.4 * target;
            };
            points += scores ? 1 : 0;
        }
        return points;
    }

    private boolean upAndDown(UpAndDownStation s, Player today) {
        StrikeModel strikes = s.shot().strikes(today, s.metres());
        Landing ball = hit(s.shot(), strikes, s.metres());
        double gone = ball.carryMetres + ball.runMetres;
        double left =
                Math.hypot(gone * Math.cos(ball.directionRadians) - s.metres(), gone * Math.sin(ball.directionRadians));
        return LevelPutt.on(speed, today.putting()).play(left, 0.305, random.nextGaussian(), random.nextGaussian())
                == 0;
    }

    private Landing hit(DrillShot shot, StrikeModel strikes, double metres) {
        LieEffect lie = shot.lie(strikes);
        Landing out = new Landing();
        strikes.strike(
                shot.number(strikes),
                metres,
                lie,
                random.nextDouble(),
                random.nextGaussian(),
                random.nextGaussian(),
                random.nextGaussian(),
                out);
        return out;
    }
}
