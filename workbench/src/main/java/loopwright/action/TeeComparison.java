package loopwright.action;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.TeePlan;
import loopwright.course.TeeSet;
import loopwright.flight.Air;
import loopwright.flight.DayConditions;
import loopwright.geo.Place;
import loopwright.ground.Firmness;
import loopwright.numerics.Watch;
import loopwright.player.PlayerProfile;
import loopwright.strategy.ScoreDistribution;
import loopwright.units.Distance;

/** The holes solved from every place that any of the sets has. */
final class TeeComparison {
    /** A winter's day: 8 C and soft ground, assumed. */
    private static final double WINTER_KELVIN = 8 + Air.ZERO_CELSIUS_KELVIN;

    private static final double MOST_TEE_SHOTS = 0.5;
    /** Parts the name of a set from its moved markers; no set is named so. */
    private static final String MOVED = "\n";

    private final TeesRequest request;
    private final RoundSetup setup;
    private final Optional<RoundSetup> winter;
    private final Map<Key, TeeHole> solved = new HashMap<>();
    private final Map<Integer, CourseMap> maps = new HashMap<>();

    private record Key(int hole, Place tee, boolean winter) {}

    TeeComparison(TeesRequest request, Course course, PlayerProfile profile, Watch watch) {
        this.request = request;
        PlanRequest round = request.round();
        PlanDay day = round.days().get(0);
        Course whole = withMarkers(course, request.markersMetres());
        setup = RoundSetup.of(whole, profile, round, day);
        winter =
                request.winter() ? Optional.of(RoundSetup.of(whole, profile, round, winterDay(day))) : Optional.empty();
        setup.holes().forEach(h -> maps.put(h.number(), new CourseMap(setup.course(), h)));
        solve(watch);
    }

    private static PlanDay winterDay(PlanDay day) {
        DayConditions c = day.conditions();
        return new PlanDay(
                new DayConditions(Air.atAltitude(WINTER_KELVIN, 0, 0.8), c.wind(), Firmness.SOFT, c.greenResistance()),
                day.greens());
    }

    private static Course withMarkers(Course course, double metres) {
        Course out = course;
        for (TeeSet set : metres == 0 ? List.<TeeSet>of() : course.teeSets()) {
            for (double forward : new double[] {-metres, metres}) {
                Map<Integer, Double> byHole = new HashMap<>();
                course.holes().forEach(h -> byHole.put(h.number(), forward));
                out = new TeePlan(moved(set.name(), forward), set.name(), Map.of(), byHole).addedTo(out);
            }
        }
        return out;
    }

    private static String moved(String set, double forward) {
        return set + MOVED + markers(forward);
    }

    private static String markers(double forward) {
        return String.format(
                Locale.ROOT,
                "markers %.0f yd %s",
                Distance.ofMetres(Math.abs(forward)).yards(),
                forward < 0 ? "back" : "forward");
    }

    private void solve(Watch watch) {
        Set<Key> keys = new LinkedHashSet<>();
        for (TeeSet set : setup.course().teeSets()) {
            for (Hole hole : setup.holes()) {
                Place tee = set.getPlace(hole.number()).place();
                keys.add(new Key(hole.number(), tee, false));
                if (winter.isPresent() && !set.name().contains(MOVED)) {
                    keys.add(new Key(hole.number(), tee, true));
                }
            }
        }
        List<Key> all = List.copyOf(keys);
        List<TeeHole> answers = Cores.all(all, k -> solve(k, watch.withoutProgress()), watch);
        IntStream.range(0, all.size()).forEach(i -> solved.put(all.get(i), answers.get(i)));
    }

    private TeeHole solve(Key key, Watch watch) {
        RoundSetup on = key.winter ? winter.orElseThrow() : setup;
        CourseMap map = Objects.requireNonNull(maps.get(key.hole));
        return TeeHole.of(
                map,
                key.tee,
                on.round().days(),
                on.greens().of(map.hole()),
                on.profile().player().swings(),
                watch);
    }

    List<TeesAnswer.Row> rows() {
        List<TeesAnswer.Row> out = new ArrayList<>();
        List<TeeSet> sets = setup.course().teeSets().stream()
                .filter(s -> !s.name().contains(MOVED))
                .toList();
        for (int i = 0; i < sets.size(); i++) {
            TeeSet set = sets.get(i);
            boolean asked = request.mixed().stream()
                    .anyMatch(m -> m.substring(0, m.indexOf('=')).strip().equals(set.name()));
            out.add(row(set.name(), "", asked, places(set), false));
            for (double forward : new double[] {-request.markersMetres(), request.markersMetres()}) {
                setup.course()
                        .findTeeSet(moved(set.name(), forward))
                        .ifPresent(s -> out.add(row(set.name(), markers(forward), asked, places(s), false)));
            }
            if (winter.isPresent()) {
                out.add(row(set.name(), "winter", asked, places(set), true));
            }
            if (i + 1 < sets.size()) {
                between(set, sets.get(i + 1)).ifPresent(out::add);
            }
        }
        return out;
    }

    private Map<Hole, Place> places(TeeSet set) {
        Map<Hole, Place> out = new LinkedHashMap<>();
        setup.holes().forEach(h -> out.put(h, set.getPlace(h.number()).place()));
        return out;
    }

    /** The longer of two sets, but the shorter where the longer leaves a long club into a par 4 or a carry too far. */
    private Optional<TeesAnswer.Row> between(TeeSet longer, TeeSet shorter) {
        Map<Hole, Place> places = new LinkedHashMap<>();
        List<Integer> forward = new ArrayList<>();
        for (Hole hole : setup.holes()) {
            TeeHole from = get(hole, longer.getPlace(hole.number()).place(), false);
            boolean tooLong = hole.par() == 4 && from.approaches().middleIronOrLess() < MOST_TEE_SHOTS;
            Place ahead = shorter.getPlace(hole.number()).place();
            Place behind = longer.getPlace(hole.number()).place();
            boolean moves = (tooLong || from.carryBeyond().isPresent()) && !ahead.equals(behind);
            places.put(hole, moves ? ahead : behind);
            if (moves) {
                forward.add(hole.number());
            }
        }
        if (forward.isEmpty() || forward.size() == setup.holes().size()) {
            return Optional.empty();
        }
        String holes = forward.stream().map(String::valueOf).collect(Collectors.joining(" "));
        return Optional.of(row(longer.name() + ", " + shorter.name() + " " + holes, "", true, places, false));
    }

    private TeeHole get(Hole hole, Place tee, boolean inWinter) {
        return Objects.requireNonNull(solved.get(new Key(hole.number(), tee, inWinter)));
    }

    private TeesAnswer.Row row(String name, String variant, boolean mixed, Map<Hole, Place> places, boolean inWinter) {
        List<TeeHole> holes = places.entrySet().stream()
                .map(e -> get(e.getKey(), e.getValue(), inWinter))
                .toList();
        double length = places.entrySet().stream()
                .mapToDouble(e -> e.getKey().lineFrom(e.getValue()).lengthMetres())
                .sum();
        return new TeesAnswer.Row(name, variant, mixed, length, Optional.of(play(holes)));
    }

    private TeesAnswer.Play play(List<TeeHole> holes) {
        ScoreDistribution total = TeeHole.total(holes, setup);
        List<TeeHole> fours = holes.stream().filter(h -> h.par() == 4).toList();
        List<TeeHole> fives = holes.stream().filter(h -> h.par() >= 5).toList();
        ApproachClubs clubs = ApproachClubs.NONE;
        for (TeeHole hole : fours) {
            clubs = clubs.plus(hole.approaches(), 1.0 / fours.size());
        }
        boolean points = request.round().counting().form() == Counting.Form.STABLEFORD;
        return new TeesAnswer.Play(
                points ? -total.mean() : total.mean(),
                total.probabilityAtMost(
                        request.round().counting().limit(request.round().target())),
                clubs,
                fours.size(),
                (int) fours.stream().filter(h -> h.inTwo() > MOST_TEE_SHOTS).count(),
                fives.size(),
                (int) fives.stream().filter(h -> h.inTwo() > MOST_TEE_SHOTS).count(),
                (int) fives.stream().filter(h -> h.inThree() > MOST_TEE_SHOTS).count(),
                holes.stream().flatMap(h -> h.carryBeyond().stream()).toList(),
                holes.stream().mapToDouble(TeeHole::lost).sum());
    }
}
