package loopwright.action;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a plan of the bench is made from: versions of a player and a course, and what the command line would be told.
 *
 * @param goal what the round is played for
 * @param today as {@link PlanRequest#today()}
 * @param holes as {@link PlanRequest#holes()}
 * @param holeLocations as {@link PlanRequest#holeLocations()}, and so the rest
 */
public record PlanChoice(
        Shelf.Entry player,
        Shelf.Entry course,
        String tees,
        Goal goal,
        DayChoice day,
        TodayRequest today,
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

    /**
     * What a round is played for.
     *
     * @param target as {@link PlanRequest#target()}, and so the rest
     */
    public record Goal(int target, Counting counting, boolean forTarget, boolean howSure) {
        /** The same, solved for the target as well. */
        public Goal playedForTarget() {
            return new Goal(target, counting, true, howSure);
        }

        /** The same, with the doubt about the player carried through. */
        public Goal saidHowSure() {
            return new Goal(target, counting, forTarget, true);
        }
    }

    public PlanChoice withPlayer(Shelf.Entry other) {
        return new PlanChoice(other, course, tees, goal, day, today, holes, holeLocations, forbid, require, seed);
    }

    public PlanChoice withHoles(String some) {
        return new PlanChoice(player, course, tees, goal, day, today, some, holeLocations, forbid, require, seed);
    }

    public PlanChoice withHoleLocations(List<String> others) {
        return new PlanChoice(player, course, tees, goal, day, today, holes, others, forbid, require, seed);
    }

    public PlanChoice withLocks(List<String> forbidden, List<String> required) {
        return new PlanChoice(player, course, tees, goal, day, today, holes, holeLocations, forbidden, required, seed);
    }

    public PlanChoice withDay(DayChoice other) {
        return new PlanChoice(player, course, tees, goal, other, today, holes, holeLocations, forbid, require, seed);
    }

    public PlanChoice withTees(String others) {
        return new PlanChoice(player, course, others, goal, day, today, holes, holeLocations, forbid, require, seed);
    }

    public PlanChoice withGoal(Goal other) {
        return new PlanChoice(player, course, tees, other, day, today, holes, holeLocations, forbid, require, seed);
    }

    /** One hole of it: target and counting are left out, and what is said of other holes, so that equal holes are solved once. */
    PlanChoice onlyHole(int number) {
        Goal hole = new Goal(1, Counting.STROKES, false, false);
        return new PlanChoice(
                player,
                course,
                tees,
                hole,
                day,
                today,
                Integer.toString(number),
                of(number, holeLocations),
                of(number, forbid),
                of(number, require),
                seed);
    }

    /** Those of "7:12,5" or "hole 7: driver" that are about a hole; what cannot be read is kept, to be told. */
    private static List<String> of(int number, List<String> texts) {
        return texts.stream()
                .filter(t -> {
                    String head = t.toLowerCase(Locale.ROOT)
                            .replace("hole", "")
                            .strip()
                            .split("\\D", 2)[0];
                    return head.isEmpty() || head.equals(Integer.toString(number));
                })
                .toList();
    }

    public PlanRequest request(Path courseFile, Path playerFile) {
        return new PlanRequest(
                courseFile,
                playerFile,
                tees,
                goal.target(),
                goal.counting(),
                goal.forTarget(),
                goal.howSure(),
                holes,
                0,
                holeLocations,
                forbid,
                require,
                List.of(day.day()),
                today,
                seed,
                Optional.empty(),
                Optional.empty());
    }

    /** The choice without player, course and seed, in the form of an address: always the same for the same choice. */
    public String inputs() {
        List<String> out = new ArrayList<>();
        add(out, "tees", tees);
        add(out, "target", Integer.toString(goal.target()));
        Counting counting = goal.counting();
        if (counting.form() != Counting.Form.STROKES) {
            add(out, "counting", counting.form().name().toLowerCase(Locale.ROOT));
            counting.handicap().ifPresent(h -> add(out, "handicap", Integer.toString(h)));
        }
        if (goal.forTarget()) {
            add(out, "objective", "target");
        }
        if (goal.howSure()) {
            add(out, "sure", "yes");
        }
        out.addAll(day.inputs());
        today.balls().ifPresent(balls -> {
            add(out, "today", balls);
            if (today.unit() == LengthUnit.METRES) {
                add(out, "today.in", today.unit().words());
            }
        });
        today.playsLonger().forEach(l -> add(out, "longer", l));
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
