package loopwright.player;

/** One thing a player can do with a full-swing club: a club, an effort ("full", "three-quarter", "half") and its pattern. */
public record Swing(Club club, String effort, ShotPattern pattern, Evidence evidence) {
    public static final String FULL = "full";

    public boolean isFull() {
        return effort.equals(FULL);
    }

    /** "7-iron", or "56-wedge half". */
    public String label() {
        return isFull() ? club.name() : club.name() + " " + effort;
    }

    /** The swing on a day. */
    public Swing on(RoundDay day) {
        return new Swing(club, effort, pattern.withSpread(day.spread()).turned(day.biasRadians()), evidence);
    }
}
