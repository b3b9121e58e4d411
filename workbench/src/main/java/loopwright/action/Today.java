package loopwright.action;

import java.util.List;
import java.util.Optional;
import loopwright.player.Player;
import loopwright.player.PlayerProfile;
import loopwright.player.Swing;
import loopwright.player.TodaysBalls;

/**
 * The player as he is planned for today, and why.
 *
 * @param balls what the warm-up says, if there was one
 * @param dial the coach's settings
 * @param sideMetres what the longest swing's finish moves aside by the warm-up, + right
 * @param seenMetres what it would move if the balls were taken as they lie
 * @param sideSdMetres how sure that is
 */
public record Today(
        Optional<TodaysBalls.Reading> balls,
        List<DayDial.Setting> dial,
        double sideMetres,
        double seenMetres,
        double sideSdMetres) {
    static final Today USUAL = new Today(Optional.empty(), List.of(), 0, 0, 0);

    public Today {
        dial = List.copyOf(dial);
    }

    /** By how many percent the coach lets the day play longer. */
    public double playsLongerPercent() {
        return DayDial.percent(dial);
    }

    /** The bias that is planned with, radians, + right. */
    double biasRadians() {
        return balls.map(b -> b.day().biasRadians()).orElse(0.0);
    }

    static Today of(TodayRequest request, PlayerProfile profile) {
        List<DayDial.Setting> dial = DayDial.read(request.playsLonger());
        if (request.balls().isEmpty()) {
            return new Today(Optional.empty(), dial, 0, 0, 0);
        }
        Player player = profile.player();
        TodaysBalls.Reading reading = TodaysBalls.read(
                new TodayText(player, request.unit()).read(request.balls().get()), profile.day());
        Swing longest = player.swings().get(0);
        double metres = longest.pattern().totalMetres();
        return new Today(
                Optional.of(reading),
                dial,
                metres * Math.tan(reading.day().biasRadians()),
                metres * Math.tan(reading.seenRadians()),
                metres * Math.tan(reading.biasSdRadians()));
    }

    /** The player to plan with. */
    PlayerProfile apply(PlayerProfile profile) {
        Player today = balls.map(b -> b.of(profile.player())).orElse(profile.player());
        return new PlayerProfile(
                DayDial.apply(dial, today),
                balls.map(TodaysBalls.Reading::left).orElse(profile.day()),
                profile.habit());
    }
}
