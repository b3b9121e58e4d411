package loopwright.player;

import java.util.List;

/** Everything seen of a player's full and partial swings: measured balls and counted ones. */
public record ShotLog(List<Shot> shots, List<BallCount> counts) {
    public static final ShotLog EMPTY = new ShotLog(List.of(), List.of());

    public ShotLog {
        shots = List.copyOf(shots);
        counts = List.copyOf(counts);
    }

    public static ShotLog ofShots(List<Shot> shots) {
        return new ShotLog(shots, List.of());
    }

    /** Balls of one club and effort, measured and counted. */
    public int balls(Club club, String effort) {
        long measured = shots.stream()
                .filter(s -> s.club().equals(club) && s.effort().equals(effort))
                .count();
        int counted = counts.stream()
                .filter(c -> c.club().equals(club) && c.effort().equals(effort))
                .mapToInt(BallCount::balls)
                .sum();
        return Math.toIntExact(measured) + counted;
    }
}
