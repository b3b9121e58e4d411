package loopwright.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;
import org.junit.jupiter.api.Test;

class TeePlanTest {
    @Test
    void aMixedSetTakesTheNamedTeesAndSaysSo() {
        Course course = new TeePlan("mixed", "back", Map.of(2, "front"), Map.of()).addedTo(course());
        TeeSet mixed = course.findTeeSet("mixed").orElseThrow();
        assertThat(course.lengthMetres(course.getHole(1), mixed)).isEqualTo(300, within(1e-9));
        assertThat(course.lengthMetres(course.getHole(2), mixed)).isEqualTo(200, within(1e-9));
        assertThat(mixed.getPlace(1).standsIn()).isEmpty();
        assertThat(mixed.getPlace(2).standsIn()).contains("front");
        assertThat(course.teeSets()).extracting(TeeSet::name).containsExactly("back", "mixed", "front");
        assertThat(course.teeSets()).extracting(TeeSet::rankFromBack).containsExactly(0, 1, 2);
    }

    @Test
    void markersMoveAlongTheLineOfPlay() {
        Course course = new TeePlan("today", "back", Map.of(), Map.of(1, 20.0, 2, -10.0)).addedTo(course());
        TeeSet today = course.findTeeSet("today").orElseThrow();
        assertThat(course.lengthMetres(course.getHole(1), today)).isEqualTo(280, within(1e-9));
        assertThat(course.lengthMetres(course.getHole(2), today)).isEqualTo(310, within(1e-9));
    }

    @Test
    void aSetOfTheSameNameIsReplaced() {
        Course once = new TeePlan("today", "back", Map.of(), Map.of()).addedTo(course());
        Course twice = new TeePlan("today", "front", Map.of(), Map.of()).addedTo(once);
        assertThat(twice.teeSets()).hasSize(3);
        assertThat(twice.lengthMetres(twice.findTeeSet("today").orElseThrow())).isEqualTo(400, within(1e-9));
    }

    @Test
    void unknownTeesAndMarkersOnTheGreenAreRefused() {
        assertThatThrownBy(() -> new TeePlan("x", "blue", Map.of(), Map.of()).addedTo(course()))
                .hasMessageContaining("no tees named \"blue\"");
        assertThatThrownBy(() -> new TeePlan("x", "back", Map.of(), Map.of(1, 200.0)).addedTo(course()))
                .hasMessageContaining("half of the hole");
    }

    /** Two holes of 300 m to the north, side by side; the front tees stand 100 m nearer. */
    private static Course course() {
        return new Course(
                "test",
                new LatLon(0, 0),
                Optional.empty(),
                false,
                List.of(),
                List.of(),
                List.of(hole(1, 0), hole(2, 100)),
                List.of(set("back", 0, 0), set("front", 1, 100)));
    }

    private static Hole hole(int number, double x) {
        Place cup = new Place(x, 300);
        return new Hole(
                number,
                4,
                "tag",
                OptionalInt.empty(),
                new Line(List.of(new Place(x, 0), cup)),
                Region.circle(cup, 10),
                false,
                cup,
                HoleSurvey.NOTHING);
    }

    private static TeeSet set(String name, int rank, double y) {
        return new TeeSet(
                name,
                rank,
                Map.of(
                        1, new TeePlace(new Place(0, y), Optional.empty()),
                        2, new TeePlace(new Place(100, y), Optional.empty())));
    }
}
