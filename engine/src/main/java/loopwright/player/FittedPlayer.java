package loopwright.player;

import java.util.List;
import loopwright.putting.PuttingSkill;

/**
 * The outcome of a fit.
 *
 * @param profile to plan with
 * @param reports one per swing, in the player's order
 */
public record FittedPlayer(PlayerProfile profile, List<SwingReport> reports) {
    public FittedPlayer {
        reports = List.copyOf(reports);
    }

    /** The same, playing without a plan by this habit. */
    public FittedPlayer withHabit(Habit habit) {
        return new FittedPlayer(new PlayerProfile(profile.player(), profile.day(), habit), reports);
    }

    /** The same with these short shots and this putting. */
    public FittedPlayer withShortGame(List<TouchShot> touchShots, PuttingSkill putting) {
        Player p = profile.player();
        Player player =
                new Player(p.name(), p.hand(), p.level(), p.swings(), touchShots, putting, p.lostBallsPerRound());
        return new FittedPlayer(new PlayerProfile(player, profile.day(), profile.habit()), reports);
    }

    public SwingReport report(String label) {
        return reports.stream()
                .filter(r -> r.swing().label().equals(label))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no swing is called " + label));
    }
}
