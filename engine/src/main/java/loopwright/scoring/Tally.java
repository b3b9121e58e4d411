package loopwright.scoring;

import java.util.List;
import java.util.OptionalInt;

/**
 * The plain counts of a round; each share runs over the holes that tell.
 *
 * @param teeBallsInPlay par 4 and longer, where the tee ball was counted
 * @param fairways par 4 and longer, where the lie of the second stroke was written down
 * @param greens on the green with two strokes of the par left
 * @param upAndDowns from around the green in two strokes or fewer
 * @param putts of holes with putts written down
 * @param threePutts three or more
 */
public record Tally(
        int birdiesOrBetter,
        int pars,
        int bogeys,
        int doublesOrWorse,
        int pickedUp,
        Share teeBallsInPlay,
        Share fairways,
        Share greens,
        Share upAndDowns,
        Share threePutts,
        OptionalInt putts,
        OptionalInt penaltyStrokes) {

    public static Tally of(RoundRecord round) {
        return new TallyCount(round.holes()).tally();
    }

    /** Adds up while walking through the holes. */
    private static final class TallyCount {
        private final int[] toPar = new int[4];
        private int pickedUp;
        private Share inPlay = Share.NONE;
        private Share fairways = Share.NONE;
        private Share greens = Share.NONE;
        private Share upAndDowns = Share.NONE;
        private Share threePutts = Share.NONE;
        private OptionalInt putts = OptionalInt.empty();
        private OptionalInt penalties = OptionalInt.empty();

        TallyCount(List<HoleRecord> holes) {
            holes.forEach(this::add);
        }

        private void add(HoleRecord hole) {
            pickedUp += hole.end() == HoleEnd.PICKED_UP ? 1 : 0;
            if (hole.par().isPresent() && hole.score().isPresent()) {
                int over = hole.score().getAsInt() - hole.par().getAsInt();
                toPar[Math.max(-1, Math.min(2, over)) + 1]++;
            }
            teeBall(hole);
            greens(hole);
            upAndDown(hole);
            if (hole.putts().isPresent()) {
                threePutts = threePutts.with(hole.putts().getAsInt() >= 3);
                putts = plus(putts, hole.putts().getAsInt());
            }
            hole.penaltyStrokes().ifPresent(p -> penalties = plus(penalties, p));
        }

        private void teeBall(HoleRecord hole) {
            if (hole.par().orElse(3) == 3) {
                return;
            }
            hole.counts().teeBall().ifPresent(ball -> inPlay = inPlay.with(ball == TeeBall.IN_PLAY));
            if (hole.shots().size() > 1) {
                Lie second = hole.shots().get(1).lie();
                boolean straight = hole.shots().get(0).penaltyStrokes() == 0;
                fairways = fairways.with(straight && (second == Lie.FAIRWAY || second == Lie.GREEN));
            }
        }

        /** A conceded putt is in the score but not among the putts. */
        private void greens(HoleRecord hole) {
            if (hole.par().isPresent()
                    && hole.score().isPresent()
                    && hole.putts().isPresent()) {
                int given = hole.end() == HoleEnd.CONCEDED ? 1 : 0;
                int before = hole.score().getAsInt() - hole.putts().getAsInt() - given;
                greens = greens.with(before <= hole.par().getAsInt() - 2);
            }
        }

        private void upAndDown(HoleRecord hole) {
            if (hole.end() != HoleEnd.HOLED) {
                return;
            }
            if (hole.shots().isEmpty()) {
                if (hole.counts().chips().orElse(0) > 0 && hole.putts().isPresent()) {
                    int strokes =
                            hole.counts().chips().getAsInt() + hole.putts().getAsInt();
                    upAndDowns = upAndDowns.with(strokes <= 2);
                }
                return;
            }
            List<Stroke> strokes = hole.shots().stream().map(ShotRecord::stroke).toList();
            for (int i = 0; i < strokes.size(); i++) {
                if (Band.of(strokes.get(i), hole.par()).part() == PartOfGame.AROUND_THE_GREEN) {
                    boolean clean = strokes.stream().skip(i).allMatch(s -> s.penaltyStrokes() == 0);
                    upAndDowns = upAndDowns.with(clean && strokes.size() - i <= 2);
                    return;
                }
            }
        }

        Tally tally() {
            return new Tally(
                    toPar[0],
                    toPar[1],
                    toPar[2],
                    toPar[3],
                    pickedUp,
                    inPlay,
                    fairways,
                    greens,
                    upAndDowns,
                    threePutts,
                    putts,
                    penalties);
        }

        private static OptionalInt plus(OptionalInt sum, int value) {
            return OptionalInt.of(sum.orElse(0) + value);
        }
    }
}
