package loopwright.adapter.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import loopwright.action.HolePicture;
import loopwright.action.LengthUnit;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.Place;
import org.junit.jupiter.api.Test;

/** The chart of a hole on the screen. */
class ScreenedHolesTest {
    @Test
    void ticksAlongTheLineOfPlayAreInTheReadersUnit() {
        Course course = new OsmCourseFiles()
                .read(Path.of("..", "demo", "course.geojson"))
                .course();
        Hole hole = course.getHole(1); // 391 yd or 357 m from the white tees: the last tick differs
        Place tee = course.findTeeSet("white").orElseThrow().getPlace(1).place();
        HolePicture picture = HolePicture.ofGround(course, hole, "white", tee);
        String yards = new ScreenedHoles().screen(picture, LengthUnit.YARDS).over(picture);
        String metres = new ScreenedHoles().screen(picture, LengthUnit.METRES).over(picture);
        assertThat(yards).contains(">300<", ">350<");
        assertThat(metres).contains(">300<").doesNotContain(">350<");
    }
}
