package loopwright.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.player.ClubTable;
import loopwright.player.CourseSwing;
import loopwright.player.Player;
import loopwright.player.Swing;

/**
 * Full swings of a round beside the patterns they were planned with: from tee and fairway, aim and finish noted, without a
 * penalty. A ball that ended in trouble is not seen where it finished, so its miss is missing here.
 */
public final class CourseSwings {
    private CourseSwings() {}

    /** A swing with its club. */
    public record OfClub(String club, CourseSwing swing) {}

    public static List<OfClub> of(RoundRecord round, Player player) {
        List<OfClub> out = new ArrayList<>();
        for (HoleRecord hole : round.holes()) {
            for (int i = 0; i + 1 < hole.shots().size(); i++) {
                swing(hole.shots().get(i), hole.shots().get(i + 1), player).ifPresent(out::add);
            }
        }
        return out;
    }

    private static Optional<OfClub> swing(ShotRecord shot, ShotRecord next, Player player) {
        boolean seen = shot.penaltyStrokes() == 0
                && (shot.lie() == Lie.TEE || shot.lie() == Lie.FAIRWAY)
                && shot.place().isPresent()
                && shot.intent().aim().isPresent()
                && next.place().isPresent();
        if (!seen) {
            return Optional.empty();
        }
        return shot.club().flatMap(club -> full(club, player)).flatMap(swing -> {
            LocalFrame frame = new LocalFrame(shot.place().orElseThrow());
            Place ball = new Place(0, 0);
            double off = ball.bearingTo(frame.toPlace(next.place().orElseThrow()))
                    - ball.bearingTo(frame.toPlace(shot.intent().aim().orElseThrow()));
            double beside =
                    Math.IEEEremainder(off, 2 * Math.PI) - swing.pattern().directionRadians();
            return Math.abs(beside) < Math.PI / 2
                    ? Optional.of(new OfClub(swing.club().name(), new CourseSwing(beside, swing.pattern())))
                    : Optional.empty();
        });
    }

    private static Optional<Swing> full(String club, Player player) {
        String name = ClubTable.find(club).map(c -> c.name()).orElse(club);
        return player.swings().stream()
                .filter(s -> s.isFull() && s.club().name().equalsIgnoreCase(name))
                .findFirst();
    }
}
