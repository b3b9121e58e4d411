package loopwright.action;

import java.util.List;
import java.util.Optional;

/**
 * A player's sets of tees side by side.
 *
 * @param holes played
 * @param published the length the published table has for his driving distance, of so many holes
 * @param sets longest first, variants after the set they belong to
 * @param choice the recommended set and why
 * @param partner the other player's sets and the pair that gives both like approach clubs, if one was asked for
 * @param today what the player's warm-up and the coach's dial changed about him
 */
public record TeesAnswer(
        String course,
        String player,
        int holes,
        String target,
        PublishedLength published,
        List<Row> sets,
        Choice choice,
        Optional<Partner> partner,
        Today today) {
    public TeesAnswer {
        sets = List.copyOf(sets);
    }

    /**
     * One set.
     *
     * @param variant "" for the set as it is, else what is different: "markers 20 yd back", "winter"
     * @param mixed true if it is made hole by hole from other sets
     * @param play what it is like to play from; empty where only lengths were asked for
     */
    public record Row(String name, String variant, boolean mixed, double lengthMetres, Optional<Play> play) {
        /** True if it can be recommended: variants belong to a day, not to a player. */
        public boolean isCandidate() {
            return variant.isEmpty();
        }
    }

    /**
     * What a set is like to play from.
     *
     * @param expected what the round counts on average, over good and bad days
     * @param chance of the target
     * @param approaches clubs into the par 4s
     * @param parFours how many there are
     * @param parFoursInTwo of them, reached in two after most tee shots; the same for par 5s in two and in three
     * @param carriesBeyond forced carries that are too long for the player
     * @param ballsLost a round: out of bounds, not found, in a penalty area
     */
    public record Play(
            double expected,
            double chance,
            ApproachClubs approaches,
            int parFours,
            int parFoursInTwo,
            int parFives,
            int parFivesInTwo,
            int parFivesInThree,
            List<ForcedCarry> carriesBeyond,
            double ballsLost) {
        public Play {
            carriesBeyond = List.copyOf(carriesBeyond);
        }
    }

    /** A carry that cannot be avoided, the whole width of the ground in front of the player. */
    public record ForcedCarry(int hole, double metres, double longestMetres) {}

    /** The recommended set and the reason in a sentence. */
    public record Choice(String set, String reason) {}

    /**
     * The other player.
     *
     * @param difference share of the approaches into par 4s that differ between the two
     */
    public record Partner(
            String player,
            PublishedLength published,
            List<Row> sets,
            Choice choice,
            String pairOwn,
            String pairOther,
            double difference) {
        public Partner {
            sets = List.copyOf(sets);
        }
    }
}
