package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.numerics.Watch;
import loopwright.player.DayEffect;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.PlayerProfile;
import loopwright.units.Distance;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Tee choice beside the published table (USGA and PGA of America, 2011: {@link PublishedLength}) on a plain course with a set
 * every 400 yd. The clubs into the par 4s decide, so the par 4s are all that is solved; they stand for a course of 18 holes
 * whose par 4s are of the usual lengths.
 */
class TeeChoiceTest {
    private static final int LEVEL = 90;
    /** Par 4s of a course as shares of its length: 340 to 420 yd of 6,300 (common practice, no source). */
    private static final double[] SHARES = {340.0 / 6300, 365.0 / 6300, 390.0 / 6300, 420.0 / 6300};

    /** The check's own tolerance; half of it is what sets 400 yd apart leave open. */
    private static final double ALLOWED_YARDS = 300;

    @ParameterizedTest
    @ValueSource(doubles = {225})
    void liesNearThePublishedLength(double drive) {
        assertNear(drive);
    }

    @Tag("long")
    @ParameterizedTest
    @ValueSource(doubles = {100, 125, 150, 175, 200, 250, 275, 300})
    void liesNearThePublishedLengthForEveryRow(double drive) {
        assertNear(drive);
    }

    private static void assertNear(double driveYards) {
        PlayerProfile player = driving(driveYards);
        PublishedLength published = PublishedLength.forDrive(TeeSide.driveMetres(player.player()));
        double middle = Distance.ofMetres((published.shortestMetres() + published.longestMetres()) / 2)
                .yards();
        List<Double> lengths = new ArrayList<>();
        for (int yards = 7600; yards >= 1200; yards -= 400) {
            if (Math.abs(yards - middle) < 900) {
                lengths.add((double) yards);
            }
        }
        TeeSide side = TeeSide.of(request(), course(lengths), player, Watch.NONE);
        double parFours = side.rows().stream()
                .filter(r -> r.name().equals(side.choice().set()))
                .mapToDouble(TeesAnswer.Row::lengthMetres)
                .sum();
        double whole = parFours / DoubleStream.of(SHARES).sum();
        double chosen = Distance.ofMetres(whole).yards();
        double outside = Distance.ofMetres(published.outsideMetres(whole)).yards();
        assertThat(outside)
                .as("drive %.0f yd: %.0f yd chosen; %s", driveYards, chosen, side.rows())
                .isLessThanOrEqualTo(ALLOWED_YARDS);
    }

    /** A golfer whose average drive, mishits included, is this long. */
    private static PlayerProfile driving(double yards) {
        double carry = 0.85 * yards;
        for (int i = 0; i < 20; i++) {
            double drive = Distance.ofMetres(TeeSide.driveMetres(player(carry))).yards();
            carry *= yards / drive;
        }
        return new PlayerProfile(player(carry), DayEffect.ASSUMED);
    }

    private static Player player(double carryYards) {
        return PlayerPrior.of(LEVEL, Player.Hand.RIGHT)
                .withDriverCarry(Distance.ofYards(carryYards))
                .player("golfer");
    }

    private static TeesRequest request() {
        Path none = Path.of("none");
        PlanRequest round = PlanRequest.usual(none, none, "back", 20, "", List.of(), List.of(), List.of(), 1);
        return new TeesRequest(round, List.of(), 0, false, Optional.empty(), false);
    }

    /** Four par 4s beside each other; a set for every length, named by its yards. */
    private static Course course(List<Double> lengths) {
        List<Hole> holes = new ArrayList<>();
        List<Area> areas = new ArrayList<>();
        for (int i = 0; i < SHARES.length; i++) {
            double x = 250 * i;
            double longest = metres(lengths.get(0), i);
            Place green = new Place(x, longest);
            holes.add(new Hole(
                    i + 1,
                    4,
                    "tag",
                    OptionalInt.empty(),
                    new Line(List.of(new Place(x, 0), green)),
                    Region.circle(green, 12.8),
                    false,
                    green,
                    new HoleSurvey(true, true, true, true)));
            areas.add(Area.of(
                    "fairway " + i,
                    AreaKind.FAIRWAY,
                    Region.of(List.of(
                            new Place(x - 16, 10),
                            new Place(x + 16, 10),
                            new Place(x + 16, longest),
                            new Place(x - 16, longest)))));
        }
        List<TeeSet> sets = new ArrayList<>();
        for (double yards : lengths) {
            Map<Integer, TeePlace> places = new HashMap<>();
            for (int i = 0; i < SHARES.length; i++) {
                double forward = metres(lengths.get(0), i) - metres(yards, i);
                places.put(i + 1, new TeePlace(new Place(250 * i, forward), Optional.empty()));
            }
            sets.add(new TeeSet(String.valueOf(yards), sets.size(), places));
        }
        return new Course(
                "plain", new LatLon(0, 0), Optional.empty(), false, areas, List.of(), holes, sets, Optional.empty());
    }

    private static double metres(double courseYards, int hole) {
        return Distance.ofYards(SHARES[hole] * courseYards).metres();
    }
}
