package loopwright.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.ClubTable;
import loopwright.player.Landing;
import loopwright.player.Player;
import loopwright.player.StrikeModel;
import loopwright.units.Distance;

/**
 * How ordinary a shot at the hole was: the share of this player's shots with that club from that distance and lie that finish
 * farther from the hole, aimed at it on level ground in still air. Only for shots that could reach: the club's length within
 * {@value #REACH_METRES} m of what was left, or a touch shot.
 *
 * @param hole number of the hole
 * @param shot number of the stroke on the hole, from 1
 * @param left where it finished, from the hole
 * @param farther share of such shots that finish farther off, 0 to 1
 */
public record OrdinaryMiss(int hole, int shot, String club, Distance from, Distance left, double farther) {
    private static final double REACH_METRES = 20;
    private static final int STRIKES = 500;
    private static final long SEED = 20260531;

    /** All shots of a round that tell it. */
    public static List<OrdinaryMiss> of(RoundRecord round, Player player) {
        StrikeModel strikes = new StrikeModel(player);
        List<OrdinaryMiss> out = new ArrayList<>();
        for (HoleRecord hole : round.holes()) {
            for (int i = 0; i < hole.shots().size(); i++) {
                boolean last = i + 1 == hole.shots().size();
                if (!last || hole.end() == HoleEnd.HOLED) {
                    Distance left = last
                            ? Distance.ofMetres(0)
                            : hole.shots().get(i + 1).toHole();
                    of(strikes, hole, i, left).ifPresent(out::add);
                }
            }
        }
        return out;
    }

    private static Optional<OrdinaryMiss> of(StrikeModel strikes, HoleRecord hole, int i, Distance left) {
        ShotRecord shot = hole.shots().get(i);
        Optional<Surface> surface = surfaceOf(shot.lie());
        if (surface.isEmpty() || shot.penaltyStrokes() > 0 || shot.club().isEmpty()) {
            return Optional.empty();
        }
        double wanted = shot.toHole().metres();
        OptionalInt played = played(strikes, shot.club().get(), surface.get(), wanted);
        return played.isEmpty()
                ? Optional.empty()
                : Optional.of(new OrdinaryMiss(
                        hole.number(),
                        i + 1,
                        strikes.label(played.getAsInt()),
                        shot.toHole(),
                        left,
                        farther(strikes, played.getAsInt(), surface.get(), wanted, left.metres())));
    }

    /** Recovery shots are not played at the hole, putts are told by their length. */
    private static Optional<Surface> surfaceOf(Lie lie) {
        return switch (lie) {
            case TEE -> Optional.of(Surface.TEE);
            case FAIRWAY -> Optional.of(Surface.FAIRWAY);
            case ROUGH -> Optional.of(Surface.ROUGH);
            case SAND -> Optional.of(Surface.BUNKER);
            default -> Optional.empty();
        };
    }

    private static OptionalInt played(StrikeModel strikes, String club, Surface surface, double wanted) {
        String name = ClubTable.find(club).map(c -> c.name()).orElse(club);
        return IntStream.range(0, strikes.shots())
                .filter(s -> strikes.allows(s, surface, Situation.ORDINARY))
                .filter(s -> strikes.isTouch(s)
                        ? strikes.label(s).equalsIgnoreCase(club) && wanted <= strikes.lengthMetres(s)
                        : strikes.swing(s).club().name().equalsIgnoreCase(name)
                                && Math.abs(strikes.lengthMetres(s) - wanted) <= REACH_METRES)
                .findFirst();
    }

    private static double farther(StrikeModel strikes, int shot, Surface surface, double wanted, double left) {
        SplittableRandom random = new SplittableRandom(SEED);
        Landing landing = new Landing();
        int farther = 0;
        for (int i = 0; i < STRIKES; i++) {
            strikes.strike(
                    shot,
                    wanted,
                    strikes.lie(shot, surface, Situation.ORDINARY),
                    random.nextDouble(),
                    random.nextGaussian(),
                    random.nextGaussian(),
                    random.nextGaussian(),
                    landing);
            double run = landing.greenRunMetres;
            double forward = landing.forwardMetres + run * Math.cos(landing.headingRadians);
            double right = landing.rightMetres + run * Math.sin(landing.headingRadians);
            farther += Math.hypot(forward - wanted, right) > left ? 1 : 0;
        }
        return (double) farther / STRIKES;
    }
}
