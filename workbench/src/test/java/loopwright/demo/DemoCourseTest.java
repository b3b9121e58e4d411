package loopwright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeeSet;
import loopwright.geo.Place;
import loopwright.units.Distance;
import org.junit.jupiter.api.Test;

/** The invented course must be one on which golf could be played. */
class DemoCourseTest {
    private static final Course COURSE = DemoCourse.create();

    @Test
    void eighteenHolesParSeventyTwoFiveSets() {
        assertThat(COURSE.holes()).hasSize(18);
        assertThat(COURSE.par()).isEqualTo(72);
        assertThat(COURSE.teeSets()).hasSize(5);
        assertThat(COURSE.holes().stream().map(h -> h.strokeIndex().orElse(0)).distinct())
                .hasSize(18)
                .doesNotContain(0);
    }

    @Test
    void lengthsFallFromSetToSetAndTheMiddleIsAboutSixThousandThreeHundredYards() {
        List<Double> yards = new ArrayList<>();
        for (TeeSet set : COURSE.teeSets()) {
            yards.add(Distance.ofMetres(COURSE.holes().stream()
                            .mapToDouble(h -> COURSE.lengthMetres(h, set))
                            .sum())
                    .yards());
        }
        assertThat(yards).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(yards.get(2)).isBetween(6200.0, 6400.0);
    }

    @Test
    void noHoleCrossesAnotherOrRunsBesideItCloserThanFiftyMetres() {
        for (Hole a : COURSE.holes()) {
            for (Hole b : COURSE.holes()) {
                if (a.number() < b.number()) {
                    assertThat(leastDistance(a, b))
                            .as("%s and %s", a.number(), b.number())
                            .isGreaterThan(30);
                    assertThat(leastDistanceOfMiddles(a, b))
                            .as("%s and %s", a.number(), b.number())
                            .isGreaterThan(50);
                }
            }
        }
    }

    @Test
    void everyTeeIsAWalkFromTheGreenBefore() {
        for (int n = 2; n <= 18; n++) {
            double walk = COURSE.getHole(n - 1)
                    .line()
                    .end()
                    .distanceTo(COURSE.getHole(n).line().start());
            // The tenth starts at the clubhouse again.
            assertThat(walk).as("to the tee of %s", n).isBetween(30.0, n == 10 ? 190.0 : 80.0);
        }
    }

    @Test
    void greensAreSmallAndNothingIsDugIntoThem() {
        for (Hole hole : COURSE.holes()) {
            assertThat(hole.green().areaSquareMetres()).isBetween(350.0, 550.0);
            for (Area area : COURSE.areas()) {
                if (area.kind() == AreaKind.BUNKER || area.kind().name().endsWith("PENALTY_AREA")) {
                    assertThat(area.region().intersects(hole.green()))
                            .as("%s on green %s", area.id(), hole.number())
                            .isFalse();
                }
            }
        }
    }

    @Test
    void everythingPlayedFromLiesInsideTheStakes() {
        var boundary = COURSE.boundary().orElseThrow();
        for (Area area : COURSE.areas()) {
            boolean played = switch (area.kind()) {
                case GREEN, TEE, BUNKER, FAIRWAY, WOODS, DEEP_ROUGH, WASTE_AREA -> true;
                default -> false;
            };
            if (played) {
                assertThat(area.region().sharedAreaSquareMetres(boundary))
                        .as(area.id())
                        // Overlay arithmetic rounds at the last bits.
                        .isGreaterThan(area.region().areaSquareMetres() * (1 - 1e-9));
            }
        }
    }

    @Test
    void bendsGoBothWaysAndWaterHasToBeCarried() {
        long left = COURSE.holes().stream().filter(h -> bend(h) < -0.15).count();
        long right = COURSE.holes().stream().filter(h -> bend(h) > 0.15).count();
        long carried = COURSE.holes().stream()
                .filter(h -> COURSE.areas().stream()
                        .filter(a -> a.kind().name().endsWith("PENALTY_AREA"))
                        .anyMatch(a -> crosses(h, a)))
                .count();
        assertThat(left).isGreaterThanOrEqualTo(3);
        assertThat(right).isGreaterThanOrEqualTo(3);
        assertThat(carried).isGreaterThanOrEqualTo(6);
    }

    @Test
    void outOfBoundsIsInPlayOnSomeHoles() {
        var boundary = COURSE.boundary().orElseThrow();
        long near = COURSE.holes().stream()
                .filter(h -> boundary.distanceToEdge(h.line().placeAt(220)) < 50)
                .count();
        assertThat(near).isBetween(2L, 8L);
    }

    @Test
    void sameSeedSameCourse() {
        Course again = DemoCourse.create();
        assertThat(again.trees()).isEqualTo(COURSE.trees());
        assertThat(again.areas().stream()
                        .map(a -> a.id() + a.region().polygons())
                        .toList())
                .isEqualTo(COURSE.areas().stream()
                        .map(a -> a.id() + a.region().polygons())
                        .toList());
    }

    /** Turn of the hole from its first to its last leg, radians, + right. */
    private static double bend(Hole hole) {
        List<Place> p = hole.line().places();
        double first = p.get(0).bearingTo(p.get(1));
        double last = p.get(p.size() - 2).bearingTo(p.get(p.size() - 1));
        return Math.IEEEremainder(last - first, 2 * Math.PI);
    }

    private static boolean crosses(Hole hole, Area area) {
        for (double s = 5; s < hole.line().lengthMetres(); s += 2) {
            if (area.region().contains(hole.line().placeAt(s))) {
                return true;
            }
        }
        return false;
    }

    private static double leastDistance(Hole a, Hole b) {
        double least = Double.POSITIVE_INFINITY;
        for (double s = 0; s <= a.line().lengthMetres(); s += 5) {
            least = Math.min(least, b.line().distanceTo(a.line().placeAt(s)));
        }
        return least;
    }

    /** As above for the parts where drives and approaches land: tees and greens of neighbours may meet. */
    private static double leastDistanceOfMiddles(Hole a, Hole b) {
        double least = Double.POSITIVE_INFINITY;
        double length = a.line().lengthMetres();
        for (double s = 0.3 * length; s <= 0.8 * length; s += 5) {
            least = Math.min(least, b.line().distanceTo(a.line().placeAt(s)));
        }
        return least;
    }
}
