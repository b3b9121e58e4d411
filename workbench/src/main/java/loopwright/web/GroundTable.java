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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loopwright.action.AreaNumbers;
import loopwright.action.MendMarks;
import loopwright.action.MendMarks.Mark;
import loopwright.course.Area;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.Line;
import loopwright.geo.Place;

/** What the chart of a hole shows, as a table: how far along its line every mark and area lies, and on which side. */
final class GroundTable {
    /** Ground beside the line that belongs to the hole as one reads it. */
    private static final double BESIDE_METRES = 70;

    private final Course course;
    private final Hole hole;
    private final Units units;
    private final DrawnNumbers numbers;

    GroundTable(Course course, Hole hole, Units units) {
        this.course = course;
        this.hole = hole;
        this.units = units;
        numbers = new DrawnNumbers(units);
    }

    private record Row(String what, double from, double to, double side, String more) {}

    DomContent content() {
        List<Row> rows = new ArrayList<>();
        MendMarks.list(course, hole).forEach(m -> rows.add(row(m)));
        MendMarks.listTrees(course).stream()
                .filter(m -> hole.line().distanceTo(m.at()) <= BESIDE_METRES)
                .forEach(m -> rows.add(row(m)));
        course.areas().forEach(a -> row(a).ifPresent(rows::add));
        rows.sort(Comparator.comparingDouble(Row::from).thenComparing(Row::what));
        return details(
                summary(Texts.say("ground.title")),
                div(table(
                                caption(Texts.say("ground.means", units.length(BESIDE_METRES))),
                                ColumnHeads.of("ground.what", "ground.along", "ground.side", "ground.more"),
                                tbody(each(
                                        rows,
                                        r -> tr(
                                                th(r.what()).attr("scope", "row"),
                                                td(along(r)),
                                                td(side(r.side())),
                                                td(r.more()).withClass("words"))))))
                        .withClass("wide")
                        .withTabindex(0)
                        .attr("role", "region")
                        .attr("aria-label", Texts.say("ground.title")));
    }

    private String along(Row r) {
        String from = units.length(r.from());
        String to = units.length(r.to());
        return from.equals(to) ? from : Texts.say("ground.fromTo", from, to);
    }

    private String side(double metres) {
        String side = units.side(metres);
        return side.isEmpty() ? Texts.say("ground.onLine") : side;
    }

    private Row row(Mark mark) {
        Line line = hole.line();
        double along = line.along(mark.at());
        String what = Texts.say("mark." + mark.kind().name()) + (mark.name().isEmpty() ? "" : ", " + mark.name());
        return new Row(what, along, along, sideOf(mark.at()), numbers.said(mark.numbers()));
    }

    /** The stretch of the line an area lies beside, if it lies near enough. */
    private Optional<Row> row(Area area) {
        List<Place> corners = area.region().polygons().stream()
                .flatMap(p -> p.get(0).stream())
                .filter(p -> hole.line().distanceTo(p) <= BESIDE_METRES)
                .toList();
        Line line = hole.line();
        return corners.stream()
                .min(Comparator.comparingDouble(line::distanceTo))
                .map(nearest -> new Row(
                        Texts.say("kind." + area.kind().name()),
                        corners.stream().mapToDouble(line::along).min().orElseThrow(),
                        corners.stream().mapToDouble(line::along).max().orElseThrow(),
                        crosses(area) ? 0 : sideOf(nearest),
                        Stream.of(area.id(), numbers.said(AreaNumbers.of(area)))
                                .filter(w -> !w.isEmpty())
                                .collect(Collectors.joining("; "))));
    }

    private boolean crosses(Area area) {
        Line line = hole.line();
        double length = line.lengthMetres();
        for (double at = 0; at <= length; at += 2) {
            if (area.region().contains(line.placeAt(at))) {
                return true;
            }
        }
        return false;
    }

    /** Metres to the right of the line of play, below zero to the left. */
    private double sideOf(Place place) {
        Line line = hole.line();
        double along = line.along(place);
        double length = line.lengthMetres();
        Place back = line.placeAt(Math.max(0, Math.min(along, length) - 1));
        Place ahead = line.placeAt(Math.min(length, along + 1));
        double turn = back.bearingTo(place) - back.bearingTo(ahead);
        return Math.signum(Math.sin(turn)) * line.distanceTo(place);
    }
}
