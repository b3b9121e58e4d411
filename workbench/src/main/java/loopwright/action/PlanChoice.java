package loopwright.action;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What a plan of the bench is made from: versions of a player and a course, and what the command line would be told.
 *
 * @param holes as {@link PlanRequest#holes()}
 * @param holeLocations as {@link PlanRequest#holeLocations()}, and so the rest
 */
public record PlanChoice(
        Shelf.Entry player,
        Shelf.Entry course,
        String tees,
        int target,
        String holes,
        List<String> holeLocations,
        List<String> forbid,
        List<String> require,
        long seed) {
    public PlanChoice {
        holeLocations = List.copyOf(holeLocations);
        forbid = List.copyOf(forbid);
        require = List.copyOf(require);
    }

    public PlanChoice withHoles(String some) {
        return new PlanChoice(player, course, tees, target, some, holeLocations, forbid, require, seed);
    }

    public PlanChoice withHoleLocations(List<String> others) {
        return new PlanChoice(player, course, tees, target, holes, others, forbid, require, seed);
    }

    PlanRequest request(Path courseFile, Path playerFile) {
        return PlanRequest.usual(courseFile, playerFile, tees, target, holes, holeLocations, forbid, require, seed);
    }

    /** The choice without player, course and seed, in the form of an address: always the same for the same choice. */
    public String inputs() {
        List<String> out = new ArrayList<>();
        add(out, "tees", tees);
        add(out, "target", Integer.toString(target));
        if (!holes.isEmpty()) {
            add(out, "holes", holes);
        }
        holeLocations.forEach(l -> add(out, "location", l));
        forbid.forEach(l -> add(out, "forbid", l));
        require.forEach(l -> add(out, "require", l));
        return String.join("&", out);
    }

    /** The whole choice as an address that can be shared. */
    public String query() {
        return "player=" + player.id() + "&course=" + course.id() + "&" + inputs() + (seed == 1 ? "" : "&seed=" + seed);
    }

    /** Tells every input apart, versions too. */
    public String key() {
        return player.id() + "." + player.version() + " " + course.id() + "." + course.version() + " " + inputs() + " "
                + seed;
    }

    private static void add(List<String> out, String name, String value) {
        out.add(name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8));
    }
}
