package loopwright.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.course.TeeSet;
import loopwright.geo.Place;

/** Words the sheet for a walk round a course: what to look at, step off and level on each hole, before it is planned. */
public final class CourseWalk {
    private static final int HOLES_A_SHEET = 6;

    private final CourseFiles files;

    public CourseWalk(CourseFiles files) {
        this.files = files;
    }

    /** The sheets of a course from a set of tees, six holes on each. */
    public Book sheets(Path file, String tees, LengthUnit unit) {
        Course course = files.read(file).course();
        TeeSet set = RoundSetup.tees(course, tees);
        List<Book.Page> pages = new ArrayList<>();
        for (int first = 0; first < course.holes().size(); first += HOLES_A_SHEET) {
            List<Hole> holes = course.holes()
                    .subList(
                            first,
                            Math.min(first + HOLES_A_SHEET, course.holes().size()));
            pages.add(page(course, set, holes, unit));
        }
        return new Book("Walk of " + course.name(), unit, pages);
    }

    private static Book.Page page(Course course, TeeSet set, List<Hole> holes, LengthUnit unit) {
        List<List<String>> rows = new ArrayList<>();
        for (Hole hole : holes) {
            Place tee = set.getPlace(hole.number()).place();
            rows.add(List.of(
                    hole.number() + "\npar " + hole.par() + "\n"
                            + unit.of(hole.lineFrom(tee).lengthMetres()),
                    ticks(hole.survey()),
                    stepOff(course, hole, tee, unit),
                    "back ____ | ____ | ____\nmiddle ____ | ____ | ____\nfront ____ | ____ | ____"));
        }
        Book.Table table = new Book.Table(
                "What to look at on each hole",
                List.of("hole", "look, and tick", "step off, in paces", "level: fall in % and which way"),
                List.of(0.11, 0.24, 0.37, 0.28),
                rows);
        return Book.Page.of(
                Book.Kind.SHEET,
                course.name() + ", holes " + holes.get(0).number() + " to "
                        + holes.get(holes.size() - 1).number(),
                List.of(
                        new Book.Line(
                                Book.Role.NOTE,
                                "Tick what you have looked at, even where there is nothing: only then is empty ground known"
                                        + " to be open. Type it in with \"course survey\". Walk when nobody plays behind you."),
                        new Book.Line(
                                Book.Role.NOTE,
                                "Also note: skyline targets seen from the tee, depth and lip of bunkers, heights of trees, local"
                                        + " rules of the card, dropping zones.")),
                table);
    }

    private static String ticks(HoleSurvey survey) {
        return tick(survey.trees(), "trees") + "\n" + tick(survey.outOfBounds(), "out of bounds") + "\n"
                + tick(survey.penaltyAreas(), "penalty areas") + "\n" + tick(survey.bunkers(), "bunkers");
    }

    private static String tick(boolean done, String what) {
        return (done ? "[x]" : "[\u00a0\u00a0]") + "\u00a0" + what.replace(' ', '\u00a0');
    }

    /** What the map says, with room for what the walk says. */
    private static String stepOff(Course course, Hole hole, Place tee, LengthUnit unit) {
        List<String> out = new ArrayList<>();
        Place end = hole.lineFrom(tee).places().get(1);
        for (RoundPlan.Carry carry :
                new Rooms(new CourseMap(course, hole)).across(tee, tee.bearingTo(end), tee.distanceTo(end))) {
            out.add("carry " + unit.whole(carry.metres()) + " over the " + carry.hazard() + ": ____");
        }
        GreenFrame frame = GreenFrame.of(hole);
        out.add("green " + unit.whole(frame.back() - frame.front()) + " deep: ____, "
                + unit.whole(frame.right() - frame.left()) + " wide: ____");
        out.add("back tee to today's markers: ____");
        return String.join("\n", out);
    }
}
