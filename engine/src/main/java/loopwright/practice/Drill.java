package loopwright.practice;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import loopwright.player.DayEffect;
import loopwright.player.Player;
import loopwright.player.RoundDay;
import loopwright.putting.GreenSpeed;
import loopwright.strategy.ScoreDistribution;

/**
 * A drill: tasks with points, so that its score measures skills. The distribution of the score for a player follows from his
 * patterns and his putting alone; it is what he should expect, and as a function of his skills the likelihood by which a score
 * teaches what they are. Balls of one playing share the player's day.
 *
 * @param name as it is typed
 * @param minutes it takes, 1 or more
 * @param purpose what it is for
 * @param setUp what to lay out
 * @param scoring how to count
 * @param tells what it measures and what it cannot tell apart
 * @param stations the tasks in order, at least one
 */
public record Drill(
        String name,
        Facility facility,
        int minutes,
        String purpose,
        String setUp,
        String scoring,
        String tells,
        List<Station> stations) {
    public Drill {
        stations = List.copyOf(stations);
        if (!name.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException("a drill's name is small letters, figures and hyphens, not " + name);
        }
        if (minutes < 1 || minutes > 240 || stations.isEmpty()) {
            throw new IllegalArgumentException("a drill takes 1 to 240 minutes and has a station");
        }
    }

    /** Most points of one playing. */
    public int most() {
        return stations.stream().mapToInt(s -> s.tries() * s.most()).sum();
    }

    /** Balls, or short shots with their putts, of one playing. */
    public int tries() {
        return stations.stream().mapToInt(Station::tries).sum();
    }

    /** The score of one playing: on any day the tries are independent, and the days are mixed. */
    public ScoreDistribution scores(Player player, DayEffect days, GreenSpeed speed) {
        if (stations.stream().allMatch(s -> s instanceof PuttStation)) {
            return onDay(player, speed); // putting has no day of its own
        }
        List<RoundDay> all = days.days();
        return ScoreDistribution.mixtureOf(
                all.stream().map(d -> onDay(player.on(d), speed)).toList(),
                all.stream().mapToDouble(RoundDay::weight).toArray());
    }

    private ScoreDistribution onDay(Player player, GreenSpeed speed) {
        return ScoreDistribution.sumOf(stations.stream()
                .map(s -> ScoreDistribution.of(0, s.points(player, speed)).repeated(s.tries()))
                .toList());
    }

    /** The skills it tells about. */
    public Set<Skill> skills(Player player) {
        Set<Skill> out = EnumSet.noneOf(Skill.class);
        stations.forEach(s -> out.addAll(s.skills(player)));
        return out;
    }

    /** The lowest score that leaves at least a share of the scores at or below it. */
    public static int quantile(ScoreDistribution scores, double share) {
        return Stream.iterate(scores.lowest(), k -> k + 1)
                .filter(k -> scores.probabilityAtMost(k) >= share)
                .findFirst()
                .orElseThrow();
    }
}
