package loopwright.action;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What a comparison of tees is asked for.
 *
 * @param round course, player, target, counting, holes, day, today's balls and seed; its tees do not matter
 * @param mixed sets made hole by hole: "blend=white, blue 1 4 7"
 * @param markersMetres today's markers are looked at so far either way as well; 0: not
 * @param winter true to look at each set on a winter day as well
 * @param partner another player for whom tees are looked for at the same time
 * @param byDistance true to go by driving distance alone: nothing is solved
 */
public record TeesRequest(
        PlanRequest round,
        List<String> mixed,
        double markersMetres,
        boolean winter,
        Optional<Path> partner,
        boolean byDistance) {
    public TeesRequest {
        mixed = List.copyOf(mixed);
    }

    /** The same as the partner is asked for. */
    TeesRequest forPartner() {
        return new TeesRequest(round.withoutBalls(), mixed, markersMetres, winter, partner, byDistance);
    }
}
