package loopwright.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.AreaSurvey;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleNotes;
import loopwright.course.HoleSurvey;
import loopwright.course.TeePlan;
import loopwright.course.TreeCover;
import loopwright.geo.LocalFrame;

/** Keeps what a map cannot say: reads a course, changes its survey step by step, writes it again. */
public final class SurveyCourse {
    /** Areas this close to a hole's line of play are shown when the hole is surveyed. */
    private static final double BESIDE_METRES = 70;

    private final CourseFiles files;

    public SurveyCourse(CourseFiles files) {
        this.files = files;
    }

    public Course open(Path file, CourseChoice choice) {
        return files.read(file, choice).course();
    }

    public void save(Course course, Path target) {
        files.write(course, target);
    }

    /** Areas of a kind beside a hole's line of play, in the order of the course. */
    public static List<Area> areasBeside(Course course, Hole hole, AreaKind kind) {
        return course.areas().stream()
                .filter(a -> a.kind() == kind)
                .filter(a ->
                        hole.line().places().stream().anyMatch(p -> a.region().distanceTo(p) <= BESIDE_METRES)
                                || hole.line().distanceTo(a.region().insidePlace()) <= BESIDE_METRES)
                .toList();
    }

    public static LocalFrame frameOf(Course course) {
        return new LocalFrame(course.origin());
    }

    public static Hole getHole(Course course, int number) {
        return course.holes().stream()
                .filter(h -> h.number() == number)
                .findFirst()
                .orElseThrow(() -> new UserFault(course.name() + " has no hole " + number + "; its holes are "
                        + course.holes().get(0).number() + " to "
                        + course.holes().get(course.holes().size() - 1).number() + "."));
    }

    public static Course withSurvey(Course course, int number, UnaryOperator<HoleSurvey> change) {
        getHole(course, number);
        List<Hole> holes = new ArrayList<>();
        for (Hole hole : course.holes()) {
            holes.add(hole.number() == number ? hole.withSurvey(change.apply(hole.survey())) : hole);
        }
        return course.withHoles(holes);
    }

    public static Course withNotes(Course course, int number, UnaryOperator<HoleNotes> change) {
        return withSurvey(course, number, s -> s.withNotes(change.apply(s.notes())));
    }

    public static Course withBunker(Course course, String id, double depthMetres, double lipMetres) {
        return withArea(
                course,
                id,
                AreaKind.BUNKER,
                a -> a.withSurvey(survey(() -> a.survey().withBunker(depthMetres, lipMetres))));
    }

    public static Course withWoods(Course course, String id, double height, double gapMetres, double density) {
        return withArea(
                course,
                id,
                AreaKind.WOODS,
                a -> a.withSurvey(survey(() -> a.survey().withTrees(new TreeCover(height, gapMetres, density)))));
    }

    /** Sets the chance of every area of a kind. */
    public static Course withNotFoundChance(Course course, AreaKind kind, double chance) {
        checkChance(chance);
        return course.withAreas(course.areas().stream()
                .map(a -> a.kind() == kind ? a.withNotFoundChance(chance) : a)
                .toList());
    }

    private static void checkChance(double chance) {
        if (!(chance >= 0 && chance <= 1)) {
            throw new UserFault("A chance of not being found lies between 0 and 100 %, not " + chance * 100 + " %.");
        }
    }

    public static Course withNotFoundChance(Course course, String id, double chance) {
        checkChance(chance);
        return withArea(course, id, null, a -> a.withNotFoundChance(chance));
    }

    public static Course withTees(Course course, TeePlan plan) {
        try {
            return plan.addedTo(course);
        } catch (IllegalArgumentException e) {
            throw new UserFault("Tees \"" + plan.name() + "\": " + e.getMessage() + ".", e);
        }
    }

    private static AreaSurvey survey(java.util.function.Supplier<AreaSurvey> make) {
        try {
            return make.get();
        } catch (IllegalArgumentException e) {
            throw new UserFault("That cannot be: " + e.getMessage() + ".", e);
        }
    }

    private static Course withArea(
            Course course, String id, @org.jspecify.annotations.Nullable AreaKind kind, UnaryOperator<Area> change) {
        List<Area> areas = new ArrayList<>();
        boolean found = false;
        for (Area area : course.areas()) {
            boolean meant = area.id().equals(id) && (kind == null || area.kind() == kind);
            found |= meant;
            areas.add(meant ? change.apply(area) : area);
        }
        if (!found) {
            String what = kind == null ? "area" : kind == AreaKind.BUNKER ? "bunker" : "wood";
            throw new UserFault("The course has no " + what + " \"" + id + "\"; ids stand in the course file and in the"
                    + " survey's list of a hole.");
        }
        return course.withAreas(areas);
    }
}
