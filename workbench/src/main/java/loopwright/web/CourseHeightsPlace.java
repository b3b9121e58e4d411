package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.form;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.util.Locale;
import loopwright.action.ImportRecord;
import loopwright.action.Shelf;
import loopwright.action.TerrainFiles;
import loopwright.action.TerrainFiles.Terrain;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.course.Course;

/** Heights of a course from an elevation raster: a grid that is fine enough shows the slopes of its greens. */
public final class CourseHeightsPlace implements Place {
    private final Workroom room;
    private final TerrainFiles terrains;

    public CourseHeightsPlace(Workroom room, TerrainFiles terrains) {
        this.room = room;
        this.terrains = terrains;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.post("/course/heights", this::take);
    }

    private void take(Context ctx) {
        String id = String.valueOf(ctx.formParam("course"));
        int seen = PlanQuery.whole("seen", String.valueOf(ctx.formParam("seen")));
        Course course = room.course(id, seen);
        Terrain terrain = Uploads.with(ctx, room, "file", (file, name) -> {
            try {
                return terrains.read(file, course);
            } catch (UserFault e) {
                throw new UserFault(String.valueOf(e.getMessage()).replace(file.toString(), name), e);
            }
        });
        room.changeCourse(id, seen, course.withHeights(terrain.heights()), Texts.say("heights.note"));
        StringBuilder said = new StringBuilder(said(terrain));
        terrain.records().stream()
                .filter(ImportRecord::warning)
                .forEach(r -> said.append(' ').append(r.assumed()));
        Said.then(ctx, said.toString(), "/course?course=" + id);
    }

    private static String said(Terrain terrain) {
        return Texts.say(
                terrain.heights().showsGreens() ? "heights.takenFine" : "heights.takenCoarse",
                String.format(Locale.ROOT, "%.1f", terrain.heights().resolutionMetres()));
    }

    /** What is known of the heights of a course, and the form that takes them in. */
    static DomContent panel(Shelf.Entry entry, Course course) {
        String now = course.heights()
                .map(h -> Texts.say(
                        h.showsGreens() ? "heights.fine" : "heights.coarse",
                        String.format(Locale.ROOT, "%.1f", h.resolutionMetres())))
                .orElseGet(() -> Texts.say("heights.none"));
        return form(
                        p(now),
                        p(Texts.say("heights.means")).withClass("note"),
                        input().withType("hidden").withName("course").withValue(entry.id()),
                        input().withType("hidden").withName("seen").withValue(Integer.toString(entry.version())),
                        label(
                                span(Texts.say("heights.file")),
                                input().withType("file").withName("file").isRequired()),
                        button(Texts.say("heights.take")).withType("submit"))
                .withMethod("post")
                .withAction("/course/heights")
                .withEnctype("multipart/form-data")
                .withClass("sheet drop");
    }
}
