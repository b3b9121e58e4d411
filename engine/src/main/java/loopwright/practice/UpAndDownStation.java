package loopwright.practice;

import java.util.EnumSet;
import java.util.Set;
import loopwright.player.Landing;
import loopwright.player.LieEffect;
import loopwright.player.Player;
import loopwright.player.StrikeModel;
import loopwright.putting.Cup;
import loopwright.putting.GreenSpeed;
import loopwright.putting.HoledChance;
import loopwright.putting.LevelPutt;

/**
 * A short shot and one putt to hole out: a point for two strokes or fewer. Length and direction of the short shot are
 * integrated on even points, its run on five; the putt is taken to lie on a green wherever the ball ends.
 *
 * @param metres to the hole
 */
public record UpAndDownStation(DrillShot shot, double metres, int tries) implements Station {
    private static final NormalGrid LENGTHS = new NormalGrid(41, 4);
    private static final NormalGrid RUNS = new NormalGrid(5, 2.5);
    private static final NormalGrid DIRECTIONS = new NormalGrid(15, 4);
    private static final double LONGEST_PUTT_METRES = 30;
    private static final double STEP_METRES = 0.1;

    public UpAndDownStation {
        if (!shot.isTouch() || !(metres > 0 && metres <= 60) || tries < 1 || tries > 100) {
            throw new IllegalArgumentException("up and down is tried 1 to 100 times with a short shot of up to 60 m");
        }
    }

    @Override
    public int most() {
        return 1;
    }

    @Override
    public double[] points(Player player, GreenSpeed speed) {
        StrikeModel strikes = shot.strikes(player, metres);
        double[] holed = holed(LevelPutt.on(speed, player.putting()));
        int number = shot.number(strikes);
        LieEffect lie = shot.lie(strikes);
        double solid = 1;
        double sum = 0;
        for (int m = 0; m < strikes.mishits(number).size(); m++) {
            double rate = strikes.mishitRate(number, m, lie);
            solid -= rate;
            sum += rate * scored(strikes, m, lie, holed);
        }
        double scored = Math.min(1, sum + solid * scored(strikes, -1, lie, holed));
        return new double[] {1 - scored, scored};
    }

    private double scored(StrikeModel strikes, int mishit, LieEffect lie, double[] holed) {
        Landing out = new Landing();
        int number = shot.number(strikes);
        return LENGTHS.mean(z1 -> RUNS.mean(z3 -> DIRECTIONS.mean(z2 -> {
            if (mishit < 0) {
                strikes.solid(number, metres, lie, z1, z2, z3, out);
            } else {
                strikes.mishit(number, mishit, metres, lie, z1, z2, z3, out);
            }
            double gone = out.carryMetres + out.runMetres;
            double forward = gone * Math.cos(out.directionRadians) - metres;
            return at(holed, Math.hypot(forward, gone * Math.sin(out.directionRadians)));
        })));
    }

    private static double[] holed(LevelPutt putt) {
        double[] out = new double[(int) (LONGEST_PUTT_METRES / STEP_METRES) + 2];
        for (int i = 0; i < out.length; i++) {
            double metres = i * STEP_METRES;
            out[i] = metres <= Cup.RADIUS_METRES ? 1 : HoledChance.of(putt, metres, PuttStation.HOLE_PAST_METRES);
        }
        return out;
    }

    private static double at(double[] holed, double metres) {
        double steps = Math.min(metres, LONGEST_PUTT_METRES) / STEP_METRES;
        int left = (int) steps;
        return holed[left] + (steps - left) * (holed[left + 1] - holed[left]);
    }

    @Override
    public Set<Skill> skills(Player player) {
        EnumSet<Skill> out = EnumSet.of(Skill.START_LINE, Skill.READING);
        out.addAll(shot.skills(player, metres));
        return out;
    }
}
