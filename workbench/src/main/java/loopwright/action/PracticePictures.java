package loopwright.action;

import java.nio.file.Path;
import loopwright.player.Player;
import loopwright.practice.Drill;

/** Port: draws drills and weeks, PNG, SVG or PDF by the ending of the name; a file appears whole or not at all. */
public interface PracticePictures {
    /** A drill as it is laid out, with what this player should expect. */
    void drawDrill(DrillCard card, Path target);

    /** A week to print and tick off. */
    void drawWeek(PracticePlan plan, Path target);

    /**
     * A drill with what to expect.
     *
     * @param hand says on which side of the ball he stands
     * @param own mean and 8-in-10 band of this player
     * @param target of a player of the target's level
     * @param lengths how the card tells lengths
     */
    record DrillCard(
            Drill drill,
            String player,
            Player.Hand hand,
            Expected own,
            String level,
            Expected target,
            ReadLengths lengths) {
        /** In yards and feet. */
        public DrillCard(Drill drill, String player, Player.Hand hand, Expected own, String level, Expected target) {
            this(drill, player, hand, own, level, target, ReadLengths.USUAL);
        }

        /** The card for a reader of other units, the words of its drill as well; of one in yards and feet. */
        public DrillCard told(ReadLengths reader) {
            Drill told = new Drill(
                    drill.name(),
                    drill.facility(),
                    drill.minutes(),
                    reader.told(drill.purpose()),
                    reader.told(drill.setUp()),
                    reader.told(drill.scoring()),
                    reader.told(drill.tells()),
                    drill.stations());
            return new DrillCard(told, player, hand, own, level, target, reader);
        }
    }

    /** Points of one playing: the mean, and where 8 of 10 scores lie. */
    record Expected(double mean, int low, int high) {}
}
