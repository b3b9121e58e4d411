package loopwright.scoring;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.units.Distance;

/**
 * The player's own past rounds as a baseline. For each part of a hole (tee, away from the green, around it, on it) it is
 * 1 + r (J - 1), J being tour strokes to hole out and r the ratio of what the player needed beyond one stroke to what they
 * need, over all places of that part that his rounds wrote down. r is drawn to that of all parts by {@value #PRIOR_STROKES}
 * strokes' worth of it (assumed), so that a part he seldom wrote down does not run away.
 */
public final class OwnPast implements StrokesBaseline {
    private static final double PRIOR_STROKES = 20;
    private static final StrokesBaseline TOUR = new TourBaseline();

    private enum Part {
        TEE,
        AWAY,
        AROUND,
        GREEN;

        static Part of(Lie lie, Distance toHole) {
            return switch (lie) {
                case TEE -> TEE;
                case GREEN -> GREEN;
                default -> toHole.yards() <= 40 ? AROUND : AWAY;
            };
        }
    }

    private final Map<Part, Double> ratio = new EnumMap<>(Part.class);
    private final int rounds;

    private OwnPast(Map<Part, double[]> sums, int rounds) {
        this.rounds = rounds;
        double needed = sums.values().stream().mapToDouble(s -> s[0]).sum();
        double tour = sums.values().stream().mapToDouble(s -> s[1]).sum();
        double overall = tour > 0 ? needed / tour : 1;
        for (Part part : Part.values()) {
            double[] s = sums.getOrDefault(part, new double[2]);
            ratio.put(part, (s[0] + PRIOR_STROKES * overall) / (s[1] + PRIOR_STROKES));
        }
    }

    /** The past as a baseline; none without a finished hole of known length or first putt. */
    public static Optional<OwnPast> of(List<RoundRecord> rounds) {
        Map<Part, double[]> sums = new EnumMap<>(Part.class);
        int told = 0;
        for (RoundRecord round : rounds) {
            if (!round.team() && !round.lesson()) {
                round.holes().forEach(hole -> add(hole, sums));
                told++;
            }
        }
        return sums.isEmpty() ? Optional.empty() : Optional.of(new OwnPast(sums, told));
    }

    private static void add(HoleRecord hole, Map<Part, double[]> sums) {
        if (hole.end() != HoleEnd.HOLED) {
            return;
        }
        if (hole.shots().isEmpty()) {
            hole.firstPutt()
                    .filter(putt -> hole.putts().orElse(0) > 0)
                    .ifPresent(putt -> add(sums, Lie.GREEN, putt, hole.putts().getAsInt()));
            hole.length()
                    .filter(length -> hole.score().isPresent() && length.metres() > 0)
                    .ifPresent(length -> add(sums, Lie.TEE, length, hole.score().getAsInt()));
            return;
        }
        int left = 0;
        for (int i = hole.shots().size() - 1; i >= 0; i--) {
            ShotRecord shot = hole.shots().get(i);
            left += 1 + shot.penaltyStrokes();
            add(sums, shot.lie(), shot.toHole(), left);
        }
    }

    private static void add(Map<Part, double[]> sums, Lie lie, Distance toHole, int strokes) {
        double[] s = sums.computeIfAbsent(Part.of(lie, toHole), p -> new double[2]);
        s[0] += strokes - 1;
        s[1] += TOUR.strokesToHoleOut(lie, toHole) - 1;
    }

    @Override
    public double strokesToHoleOut(Lie lie, Distance toHole) {
        return 1 + ratio.getOrDefault(Part.of(lie, toHole), 1.0) * (TOUR.strokesToHoleOut(lie, toHole) - 1);
    }

    @Override
    public boolean isPublished(Lie lie, Distance toHole) {
        return true;
    }

    @Override
    public String name() {
        return rounds == 1 ? "your own round before" : "your own " + rounds + " rounds before";
    }
}
