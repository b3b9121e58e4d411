package loopwright.action;

import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.geo.Place;
import loopwright.player.PlayingLength;
import loopwright.player.StrikeModel;
import loopwright.player.Swing;
import loopwright.units.Distance;

/** Reads how a planned shot is started: start line, finish, the spot ahead, and what the wind asks for in clubs. */
record StartReading(StrikeModel strikes) {
    /** Two lengths of the longest club that may be carried: 46 in each. */
    static final double TWO_CLUB_LENGTHS_METRES = 2 * 46 * Distance.METRES_PER_INCH;

    /** A wind that costs less than this asks for no other club, metres. */
    private static final double LEAST_WIND_METRES = 2;

    RoundPlan.Start of(Place ball, double bearing, double metres, int shot, Optional<PlayingLength> playing) {
        double shape = strikes.isTouch(shot) ? 0 : strikes.swing(shot).pattern().directionRadians();
        double drift = playing.map(PlayingLength::driftRadians).orElse(0.0);
        return new RoundPlan.Start(
                ball.along(bearing + shape + drift, metres),
                ball.along(bearing, TWO_CLUB_LENGTHS_METRES),
                -TWO_CLUB_LENGTHS_METRES * Math.tan(shape + drift),
                playing.map(p -> moreClubs(shot, p.windMetres())).orElse(0.0));
    }

    private double moreClubs(int shot, double windMetres) {
        OptionalDouble gap = gapMetres(shot);
        return strikes.isTouch(shot) || windMetres < LEAST_WIND_METRES || gap.isEmpty()
                ? 0
                : Math.rint(2 * windMetres / gap.getAsDouble()) / 2;
    }

    /** From this full club to the next one up, or where there is none to the next one down. */
    private OptionalDouble gapMetres(int shot) {
        double here = strikes.lengthMetres(shot);
        double up = Double.POSITIVE_INFINITY;
        double down = Double.POSITIVE_INFINITY;
        for (int s = 0; s < strikes.shots() && !strikes.isTouch(s); s++) {
            Swing other = strikes.swing(s);
            double step = strikes.lengthMetres(s) - here;
            if (other.isFull() && step > 0) {
                up = Math.min(up, step);
            } else if (other.isFull() && step < 0) {
                down = Math.min(down, -step);
            }
        }
        double gap = Double.isFinite(up) ? up : down;
        return Double.isFinite(gap) ? OptionalDouble.of(gap) : OptionalDouble.empty();
    }
}
