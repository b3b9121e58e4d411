package loopwright.adapter.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import loopwright.action.HolePicture;
import loopwright.action.HoleScreens.Screen;
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

    @Test
    void theGroundLiesTheSameWhereverOnTheGreenTheHoleIsCut() {
        Course course = new OsmCourseFiles()
                .read(Path.of("..", "demo", "course.geojson"))
                .course();
        for (Hole hole : course.holes()) {
            Place tee = course.findTeeSet("white")
                    .orElseThrow()
                    .getPlace(hole.number())
                    .place();
            Screen usual = screen(course, hole, tee);
            String ground = usual.ground();
            for (double bearing : new double[] {0, 2, 4}) {
                Place cut = hole.holeLocation().along(bearing, 3);
                Screen moved = screen(course, hole.withHoleLocation(cut), tee);
                assertThat(moved.ground()).as("hole " + hole.number()).isEqualTo(ground);
                assertThat(moved.at(tee)).containsExactly(usual.at(tee));
                assertThat(moved.at(cut)).isNotEqualTo(moved.at(hole.holeLocation()));
            }
        }
    }

    private static Screen screen(Course course, Hole hole, Place tee) {
        return new ScreenedHoles().screen(HolePicture.ofGround(course, hole, "white", tee), LengthUnit.YARDS);
    }
}
