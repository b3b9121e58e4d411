package loopwright.action;

import java.util.List;
import loopwright.player.CourseSwing;
import loopwright.player.DayLearning;
import loopwright.player.LearnedDay;
import loopwright.player.Player;
import loopwright.player.PlayerProfile;
import loopwright.player.Swing;
import loopwright.scoring.CourseSwings;

/** Learns from a player's kept rounds how his days differ and how much wider he plays on the course. */
public final class LearnFromRounds {
    /** With fewer swings the prior speaks alone. */
    private static final int FEWEST_SWINGS = 20;

    private final Workroom room;
    private final KeepRounds rounds;

    public LearnFromRounds(Workroom room, KeepRounds rounds) {
        this.room = room;
        this.rounds = rounds;
    }

    /** What the rounds tell of the newest version of a player. */
    public LearnedDay learn(String player) {
        Shelf.Document document = room.store().players().get(player);
        Player planned = room.player(player, document.version()).player();
        List<List<CourseSwing>> swings = rounds.rounds(player).stream()
                .map(k -> CourseSwings.of(k.record(), planned).stream()
                        .map(CourseSwings.OfClub::swing)
                        .toList())
                .toList();
        return DayLearning.learn(swings);
    }

    /** Keeps a version of the player with the learned day and spreads. */
    public Shelf.Document keep(String player, LearnedDay learned) {
        if (learned.swings() < FEWEST_SWINGS) {
            throw new UserFault("Only " + learned.swings() + " full swings were written down with aim and finish, and "
                    + FEWEST_SWINGS + " are needed; play a lesson (loopwright lesson play) or note aims in a round.");
        }
        Shelf.Document document = room.store().players().get(player);
        PlayerProfile before = room.player(player, document.version());
        Player p = before.player();
        Player wider = new Player(
                p.name(),
                p.hand(),
                p.level(),
                p.swings().stream()
                        .map(s -> new Swing(
                                s.club(),
                                s.effort(),
                                s.pattern().withSpread(learned.widening().middle()),
                                s.evidence()))
                        .toList(),
                p.touchShots(),
                p.putting(),
                p.lostBallsPerRound());
        return room.changePlayer(
                player,
                document.version(),
                new PlayerProfile(wider, learned.day(), before.habit()),
                "learned from " + learned.rounds() + " rounds");
    }
}
