package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.fieldset;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.h3;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.legend;
import static j2html.TagCreator.option;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.select;
import static j2html.TagCreator.span;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import j2html.tags.specialized.DivTag;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import loopwright.action.AreaNumbers;
import loopwright.action.CourseImage;
import loopwright.action.HoleScreens.Ground;
import loopwright.action.MendMarks;
import loopwright.action.MendMarks.Kind;
import loopwright.action.Shelf;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.LocalRule;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** The chart of a hole, or of the whole course, on which areas are mended. */
final class AreaEditor {
    private final Course course;
    private final Optional<Hole> hole;
    private final Ground screen;
    private final Shelf.Entry entry;
    private final Units units;

    AreaEditor(Course course, Optional<Hole> hole, Ground screen, Shelf.Entry entry, Units units) {
        this.course = course;
        this.hole = hole;
        this.screen = screen;
        this.entry = entry;
        this.units = units;
    }

    /** {@code mark} is a place that is looked at; {@code image} lies under the ground where it is shown. */
    DomContent chart(Optional<double[]> mark, Optional<CourseImage> image, boolean imageShown) {
        Place origin = new Place(0, 0);
        double[] a = screen.at(origin);
        double[] b = screen.at(origin.along(0, units.metres(1)));
        String beware = mark.map(m -> String.format(
                        Locale.ROOT, "<path class=\"found\" d=\"M%.1f %.1fl9 16h-18z\"/>", m[0], m[1] - 10))
                .orElse("");
        DivTag out = div(rawHtml(String.format(
                                Locale.ROOT,
                                "<svg viewBox=\"0 0 %.0f %.0f\" data-unit=\"%.3f\" data-height=\"%.4f\" data-north=\"%.2f\" role=\"group\" aria-label=\"%s\"%s>",
                                screen.width(),
                                screen.height(),
                                Math.hypot(a[0] - b[0], a[1] - b[1]),
                                // points of the chart for one unit of height; clockwise from up to north, degrees
                                Math.hypot(a[0] - b[0], a[1] - b[1]) / units.metres(1) * units.heightMetres(1),
                                Math.toDegrees(Math.atan2(b[0] - a[0], a[1] - b[1])),
                                HoleSvg.escaped(hole.map(h -> Texts.say("edit.picture", h.number()))
                                        .orElseGet(() -> Texts.say("edit.pictureWhole"))),
                                image.isPresent() && imageShown ? " class=\"over-photo\"" : "")
                        + image.map(i -> CourseImagePlace.svg(entry, i, course, screen))
                                .orElse("")
                        + "<g class=\"ground\" aria-hidden=\"true\"><rect class=\"paper\" width=\"100%\""
                        + " height=\"100%\"/>"
                        + screen.ground()
                        + "</g>"
                        + beware
                        + "<g class=\"edit\"></g></svg>"))
                .withClass("chart editor")
                .attr("data-course", entry.id())
                .attr("data-seen", Integer.toString(entry.version()))
                .attr("data-hole", Integer.toString(hole.map(Hole::number).orElse(0)))
                .attr(
                        "data-found",
                        mark.map(m -> HolePlace.number(m[0]) + " " + HolePlace.number(m[1]))
                                .orElse(""))
                .attr("data-needed", Texts.say("mark.needed"))
                .attr("data-placing", Texts.say("mark.placing"))
                .attr("data-pen", Texts.say("edit.pen", units.lengths().words()))
                .attr("data-drawing", Texts.say("edit.drawing"))
                .attr("data-few", Texts.say("edit.few"))
                .attr("data-corner", Texts.say("edit.corner"));
        for (Kind kind : Kind.values()) {
            out.attr("data-kind-" + kind.name().toLowerCase(Locale.ROOT).replace('_', '-'), Texts.say("mark." + kind));
        }
        return out;
    }

    /** Everything the chart is mended from. */
    Map<String, Object> content() {
        DrawnMarks drawn = new DrawnMarks(screen, units);
        List<MendMarks.Mark> marks = new ArrayList<>(MendMarks.listTrees(course));
        hole.ifPresent(h -> marks.addAll(MendMarks.list(course, h)));
        return Map.of(
                "areas",
                areas(),
                "marks",
                drawn.shown(marks),
                "rules",
                hole.map(h -> h.survey().notes().localRules()).orElse(Set.of()),
                "fresh",
                drawn.fresh(),
                "assumed",
                Arrays.stream(AreaKind.values())
                        .collect(Collectors.toMap(AreaKind::name, k -> numbers().read(AreaNumbers.assumed(k)))));
    }

    private DrawnNumbers numbers() {
        return new DrawnNumbers(units);
    }

    /** Shows the image under the ground or hides it; nothing where there is none. */
    static DomContent switchOf(Optional<CourseImage> image, boolean shown) {
        return image.isEmpty()
                ? text("")
                : button(Texts.say("image.show"))
                        .withType("button")
                        .withClass("quiet")
                        .withId("photo")
                        .attr("aria-pressed", Boolean.toString(shown));
    }

    /** The tools; {@code imageSwitch} is of {@link #switchOf}. */
    DomContent tools(DomContent imageSwitch) {
        return div(
                        h2(Texts.say("edit.title")),
                        p(Texts.say("edit.means")).withClass("note"),
                        div(
                                        PlanForm.field(
                                                "edit.kind",
                                                select(
                                                                each(
                                                                        Arrays.asList(AreaKind.values()),
                                                                        k -> option(Texts.say("kind." + k.name()))
                                                                                .withValue(k.name())),
                                                                option(Texts.say("edit.border"))
                                                                        .withValue(DrawnAreas.BORDER_KIND))
                                                        .withId("kind")),
                                        label(
                                                span(Texts.say("edit.width") + ", " + units.unit()),
                                                input().withType("text")
                                                        .withId("line-width")
                                                        .withValue("3")
                                                        .attr("inputmode", "decimal")))
                                .withClass("fields"),
                        div(
                                        imageSwitch,
                                        tool("zoom"),
                                        tool("draw"),
                                        tool("draw-line"),
                                        tool("cut"),
                                        tool("remove"),
                                        tool("undo"),
                                        tool("redo"),
                                        button(Texts.say("edit.save"))
                                                .withType("button")
                                                .withId("save"))
                                .withClass("tools"),
                        fields("area-fields", List.of("height", "gap", "density", "depth", "lip", "lost")),
                        hole.isPresent() ? rules() : text(""),
                        marks(),
                        p(span().withId("edit-said")).attr("role", "status"))
                .withClass("sheet");
    }

    private DomContent marks() {
        List<Kind> kinds = hole.isPresent()
                ? Arrays.stream(Kind.values())
                        .filter(k -> k != Kind.HOLE_LOCATION)
                        .toList()
                : List.of(Kind.TREE);
        return div(
                h3(Texts.say("mark.title")),
                p(Texts.say(
                                hole.isPresent() ? "mark.means" : "mark.meansTrees",
                                units.lengths().words()))
                        .withClass("note"),
                hole.isPresent() ? text("") : holes(),
                PlanForm.field(
                        "mark.kind",
                        select(each(
                                        kinds,
                                        k -> option(Texts.say(k == Kind.TEE ? "mark.newTees" : "mark." + k))
                                                .withValue(k.name())))
                                .withId("mark-kind")),
                div(tool("mark-add")).withClass("tools"),
                fields(
                        "mark-fields",
                        List.of("name", "crown", "height", "gap", "density", "level", "slope", "toward")));
    }

    /** The way to the marks of each hole: on the whole course its tees and markers lie under one finger. */
    private DomContent holes() {
        return p(
                        text(Texts.say("mark.perHole") + " "),
                        each(
                                course.holes(),
                                h -> span(
                                        a(Integer.toString(h.number()))
                                                .withHref("/course?course=" + entry.id() + "&hole=" + h.number())
                                                .attr("aria-label", Texts.say("hole.title", h.number())),
                                        text(" "))))
                .withClass("holes");
    }

    /** What can be said of what is chosen; the script shows what applies. */
    private DomContent fields(String id, List<String> numbers) {
        return fieldset(
                        legend(),
                        each(
                                numbers,
                                what -> label(
                                        span(numbers().words(what)),
                                        input().withType("text")
                                                .attr("data-what", what)
                                                .withMaxlength("60"))))
                .withId(id)
                .withClass("fields")
                .attr("hidden");
    }

    private static DomContent rules() {
        return fieldset(
                        legend(Texts.say("note.rules")),
                        each(
                                Arrays.asList(LocalRule.values()),
                                r -> label(
                                                input().withType("checkbox").withValue(r.name()),
                                                span(Texts.say("rule." + r)))
                                        .withClass("tick")))
                .withId("rules");
    }

    private static DomContent tool(String name) {
        return button(Texts.say("edit." + name))
                .withType("button")
                .withClass("quiet")
                .withId(name);
    }

    /** The border and the areas in view, corners on the screen. */
    List<Map<String, Object>> areas() {
        List<Map<String, Object>> out = new ArrayList<>();
        course.boundary()
                .ifPresent(b -> shape(DrawnAreas.BORDER, DrawnAreas.BORDER_KIND, Texts.say("edit.border"), b, Map.of())
                        .ifPresent(out::add));
        for (Area a : course.areas()) {
            String kind = a.kind().name();
            shape(
                            a.id(),
                            kind,
                            Texts.say("kind." + kind) + " " + a.id(),
                            a.region(),
                            numbers().read(AreaNumbers.of(a)))
                    .ifPresent(out::add);
        }
        return out;
    }

    private Optional<Map<String, Object>> shape(
            String id, String kind, String words, Region region, Map<String, Double> numbers) {
        List<List<List<double[]>>> polygons = polygons(region, screen);
        return polygons.stream().flatMap(List::stream).flatMap(List::stream).anyMatch(this::inView)
                ? Optional.of(Map.of("id", id, "kind", kind, "words", words, "polygons", polygons, "numbers", numbers))
                : Optional.empty();
    }

    /** Rings of a region on the screen, none with its first corner again. */
    static List<List<List<double[]>>> polygons(Region region, Ground screen) {
        return region.polygons().stream()
                .map(polygon -> polygon.stream()
                        .map(ring -> ring.subList(0, ring.size() - 1).stream()
                                .map(screen::at)
                                .toList())
                        .toList())
                .toList();
    }

    private boolean inView(double[] at) {
        return at[0] >= 0 && at[1] >= 0 && at[0] <= screen.width() && at[1] <= screen.height();
    }
}
