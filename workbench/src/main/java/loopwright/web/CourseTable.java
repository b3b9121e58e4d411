package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.Comparator;
import java.util.List;
import loopwright.action.AreaNumbers;
import loopwright.course.Area;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.Place;

/** What the chart of a whole course shows, as a table: every area with the hole it lies nearest to. */
final class CourseTable {
    private final Course course;
    private final DrawnNumbers numbers;

    CourseTable(Course course, Units units) {
        this.course = course;
        numbers = new DrawnNumbers(units);
    }

    private record Row(int hole, Area area) {}

    DomContent content() {
        List<Row> rows = course.areas().stream()
                .map(a -> new Row(nearest(a.region().insidePlace()), a))
                .sorted(Comparator.comparingInt(Row::hole)
                        .thenComparing(r -> r.area().kind()))
                .toList();
        return details(
                summary(Texts.say("ground.title")),
                div(table(
                                caption(Texts.say(
                                        "ground.meansWhole", course.trees().size())),
                                ColumnHeads.of("ground.what", "ground.hole", "ground.more"),
                                tbody(each(
                                        rows,
                                        r -> tr(
                                                th(Texts.say("kind." + r.area().kind()))
                                                        .attr("scope", "row"),
                                                td(Integer.toString(r.hole())),
                                                td(more(r.area())).withClass("words"))))))
                        .withClass("wide")
                        .withTabindex(0)
                        .attr("role", "region")
                        .attr("aria-label", Texts.say("ground.title")));
    }

    private int nearest(Place place) {
        return course.holes().stream()
                .min(Comparator.comparingDouble(h -> h.line().distanceTo(place)))
                .map(Hole::number)
                .orElseThrow();
    }

    private String more(Area area) {
        String said = numbers.said(AreaNumbers.of(area));
        return said.isEmpty() ? area.id() : area.id() + "; " + said;
    }
}
