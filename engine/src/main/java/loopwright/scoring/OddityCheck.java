package loopwright.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.scoring.Oddity.Kind;
import loopwright.units.Distance;

/** Looks through a round for what should be asked; holes marked as checked are left alone. The limits are ours. */
public final class OddityCheck {
    private static final double LONGEST_PUTT = Distance.ofYards(40).metres();
    private static final double HOLED_FROM = Distance.ofYards(60).metres();
    private static final int MOST_PUTTS = 4;
    private static final int MOST_OVER_PAR = 7;

    /** A distance paced or read off a mark is this far out anyway. */
    private static final double READING = Distance.ofYards(3).metres();

    private final List<Oddity> found = new ArrayList<>();

    private OddityCheck() {}

    /** What should be asked about one hole, whether marked as checked or not. */
    public static List<Oddity> of(HoleRecord hole) {
        OddityCheck check = new OddityCheck();
        check.hole(hole);
        return List.copyOf(check.found);
    }

    /** What should be asked about a round. */
    public static List<Oddity> of(RoundRecord round) {
        OddityCheck check = new OddityCheck();
        round.holes().stream()
                .filter(hole -> !hole.marks().contains(HoleMark.CHECKED))
                .forEach(check::hole);
        return List.copyOf(check.found);
    }

    private void hole(HoleRecord hole) {
        score(hole);
        length(hole);
        counts(hole);
        for (int i = 0; i < hole.shots().size(); i++) {
            shot(hole, i);
        }
    }

    private void score(HoleRecord hole) {
        if (hole.par().isPresent() && hole.score().orElse(0) > hole.par().getAsInt() + MOST_OVER_PAR) {
            add(Kind.HIGH_SCORE, hole, 0, hole.score().getAsInt(), hole.par().getAsInt());
        }
        if (hole.writtenScore().isPresent() && hole.countedFromShots().isPresent()) {
            int written = hole.writtenScore().getAsInt();
            int counted = hole.countedFromShots().getAsInt();
            if (written != counted) {
                add(Kind.SCORE_DOES_NOT_ADD_UP, hole, 0, written, counted);
            }
        }
    }

    /** Lengths no course of that par has, wide on purpose: 60 to 280, 200 to 530, 370 to 720 yd (common practice). */
    private void length(HoleRecord hole) {
        if (hole.par().isEmpty() || hole.par().getAsInt() > 5) {
            return;
        }
        int par = hole.par().getAsInt();
        double low = Distance.ofYards(new int[] {60, 200, 370}[par - 3]).metres();
        double high = Distance.ofYards(new int[] {280, 530, 720}[par - 3]).metres();
        lengthOf(hole)
                .filter(length -> length < low || length > high)
                .ifPresent(length -> add(Kind.LENGTH_AND_PAR, hole, 0, length, par));
    }

    private static Optional<Double> lengthOf(HoleRecord hole) {
        return hole.length()
                .or(() -> hole.shots().stream()
                        .findFirst()
                        .filter(s -> s.lie() == Lie.TEE)
                        .map(ShotRecord::toHole))
                .map(Distance::metres);
    }

    private void counts(HoleRecord hole) {
        int putts = hole.putts().orElse(0);
        if (putts > MOST_PUTTS) {
            add(Kind.MANY_PUTTS, hole, 0, putts, MOST_PUTTS);
        }
        int around =
                putts + hole.counts().chips().orElse(0) + hole.penaltyStrokes().orElse(0);
        if (hole.shots().isEmpty() && hole.score().isPresent() && hole.score().getAsInt() < Math.max(1, around)) {
            add(Kind.COUNTS_LEAVE_NO_STROKE, hole, 0, hole.score().getAsInt(), around);
        }
        if (hole.shots().isEmpty() && hole.score().orElse(-1) == putts && putts > 0) {
            add(Kind.COUNTS_LEAVE_NO_STROKE, hole, 0, putts, putts);
        }
        hole.counts()
                .firstPutt()
                .filter(putt -> putt.metres() >= LONGEST_PUTT)
                .ifPresent(putt -> add(Kind.VERY_LONG_PUTT, hole, 0, putt.metres(), LONGEST_PUTT));
    }

    private void shot(HoleRecord hole, int i) {
        ShotRecord shot = hole.shots().get(i);
        double metres = shot.toHole().metres();
        if (shot.lie() == Lie.GREEN && metres >= LONGEST_PUTT) {
            add(Kind.VERY_LONG_PUTT, hole, i + 1, metres, LONGEST_PUTT);
        }
        if (i == 0) {
            if (shot.lie() != Lie.TEE) {
                add(Kind.NOT_FROM_TEE, hole, 1, 0, 0);
            }
        } else {
            after(hole, i, hole.shots().get(i - 1));
        }
        boolean last = i == hole.shots().size() - 1;
        if (last && hole.end() == HoleEnd.HOLED && shot.lie() != Lie.GREEN && metres > HOLED_FROM) {
            add(Kind.HOLED_FROM_FAR, hole, i + 1, metres, HOLED_FROM);
        }
    }

    private void after(HoleRecord hole, int i, ShotRecord before) {
        ShotRecord shot = hole.shots().get(i);
        if (before.penaltyStrokes() > 0) {
            return;
        }
        if (shot.lie() == Lie.TEE) {
            add(Kind.TEE_AGAIN_WITHOUT_PENALTY, hole, i + 1, 0, 0);
        } else if (shot.toHole().metres() > before.toHole().metres() + readingOf(before)) {
            add(
                    Kind.FARTHER_WITHOUT_PENALTY,
                    hole,
                    i + 1,
                    shot.toHole().metres(),
                    before.toHole().metres());
        }
    }

    /** Putts are paced in feet, longer strokes in yards. */
    private static double readingOf(ShotRecord before) {
        return before.lie() == Lie.GREEN ? READING / 3 : READING;
    }

    private void add(Kind kind, HoleRecord hole, int shot, double value, double beside) {
        found.add(new Oddity(kind, hole.number(), shot, value, beside));
    }
}
