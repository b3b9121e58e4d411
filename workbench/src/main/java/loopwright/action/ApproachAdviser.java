package loopwright.action;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.putting.GreenSurface;
import loopwright.strategy.Advice;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.MeasuredGreen;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;
import loopwright.units.Distance;

/**
 * Says how to approach each green: the hole is solved for where the plan approaches from, and then from there for every hole
 * location. Four paces from an edge and 3 % of slope are common practice, no source.
 */
public final class ApproachAdviser {
    private static final double PACE = Distance.METRES_PER_YARD;
    /** Strokes by which two aims differ that are told as one: a fiftieth, assumed. */
    private static final double UNNOTICED = 0.02;

    private static final double LEAST_EDGE_METRES = 4 * PACE;
    private static final double MOST_SLOPE = 0.03;
    /** Off the green by so much a short shot is needed and the lie of that side counts. */
    private static final double BESIDE_METRES = 6 * PACE;
    /** A shot that aims so near to the hole is an approach. */
    private static final double AT_THE_GREEN_METRES = 25;

    private static final int MOST_SHOTS = 4;

    private final CourseFiles courses;
    private final PlayerFiles players;
    private final PinSheetFile sheets;

    public ApproachAdviser(CourseFiles courses, PlayerFiles players, PinSheetFile sheets) {
        this.courses = courses;
        this.players = players;
        this.sheets = sheets;
    }

    public ApproachAnswer approach(ApproachRequest request, Watch watch) {
        List<String> locations =
                new ArrayList<>(request.pinSheet().map(sheets::read).orElse(List.of()));
        locations.addAll(request.round().holeLocations());
        PlanRequest round = request.round().withHoleLocations(locations);
        RoundSetup setup = RoundSetup.read(round, round.days().get(0), courses, players);
        List<ApproachAnswer.HoleApproach> holes = Cores.all(
                IntStream.range(0, setup.holes().size()).boxed().toList(),
                i -> hole(setup, i, request.fromMetres(), locations, watch.withoutProgress()),
                watch);
        return new ApproachAnswer(
                setup.course().name(),
                setup.tees().name(),
                setup.profile().player().name(),
                holes);
    }

    private static ApproachAnswer.HoleApproach hole(
            RoundSetup setup, int i, OptionalDouble fromMetres, List<String> locations, Watch watch) {
        Hole hole = setup.holes().get(i);
        CourseMap map = new CourseMap(setup.course(), hole);
        Place tee = setup.tees().getPlace(hole.number()).place();
        Place from =
                fromMetres.isPresent() ? along(hole, tee, fromMetres.getAsDouble()) : planned(setup, map, tee, watch);
        Surface lie = from.equals(tee) ? Surface.TEE : map.surfaceAt(from);
        if (!lie.isPlayable() || lie == Surface.GREEN) {
            throw new UserFault("No ball is approached with from there on hole " + hole.number() + " ("
                    + Rooms.words(lie) + "); give another distance with --from.");
        }
        GreenZones zones = new GreenZones(hole);
        String own = hole.number() + ":";
        boolean cut = locations.stream().anyMatch(l -> l.strip().startsWith(own));
        List<GreenZones.Zone> places =
                cut ? List.of(new GreenZones.Zone("hole location", hole.holeLocation())) : zones.all();
        return new ApproachAnswer.HoleApproach(
                hole.number(),
                hole.par(),
                from,
                lie,
                from.distanceTo(hole.green().centre()),
                MeasuredGreen.find(setup.course(), hole).isPresent(),
                places.stream()
                        .map(z -> new Location(setup, hole, zones, from, lie, z).answer(watch))
                        .toList());
    }

    private static Place along(Hole hole, Place tee, double fromMetres) {
        Line line = hole.lineFrom(tee);
        if (fromMetres >= line.lengthMetres()) {
            return tee;
        }
        return line.placeAt(line.lengthMetres() - fromMetres);
    }

    /** Where the coarsely solved plan approaches the green from. */
    private static Place planned(RoundSetup setup, CourseMap map, Place tee, Watch watch) {
        Hole hole = map.hole();
        MeanSolution solution = MeanSolver.solve(
                new HoleProblem(
                        map,
                        tee,
                        setup.round().ordinary(),
                        SolverSettings.FOR_COMPARISON,
                        ShotRules.FREE,
                        setup.greens().of(hole).odds()),
                watch);
        Advice advice = new Advice(solution, solution.evaluate(watch));
        Place ball = tee;
        Surface lie = Surface.TEE;
        for (int shot = 0; shot < MOST_SHOTS; shot++) {
            Advice.Rated chosen = advice.chosen(ball, lie, Situation.ORDINARY);
            Place next = advice.finish(ball, lie, Situation.ORDINARY, chosen).typical();
            boolean atTheGreen = chosen.target().distanceTo(hole.holeLocation()) < AT_THE_GREEN_METRES;
            Surface there = map.surfaceAt(next);
            if (atTheGreen || there == Surface.GREEN || !there.isPlayable()) {
                break;
            }
            ball = next;
            lie = there;
        }
        return ball;
    }

    /** One hole location, worked out. */
    private static final class Location {
        private final RoundSetup setup;
        private final Hole hole;
        private final GreenZones zones;
        private final Place from;
        private final Surface lie;
        private final GreenZones.Zone zone;

        Location(RoundSetup setup, Hole hole, GreenZones zones, Place from, Surface lie, GreenZones.Zone zone) {
            this.setup = setup;
            this.hole = hole.withHoleLocation(zone.place());
            this.zones = zones;
            this.from = from;
            this.lie = lie;
            this.zone = zone;
        }

        ApproachAnswer.Location answer(Watch watch) {
            watch.check();
            Course course = setup.course();
            MeanSolution solution = MeanSolver.solve(
                    new HoleProblem(
                            new CourseMap(course, hole),
                            from,
                            setup.round().ordinary(),
                            SolverSettings.FOR_COMPARISON,
                            ShotRules.FREE,
                            setup.greens().of(hole).odds()),
                    watch);
            PolicyEvaluation evaluation = solution.evaluate(watch);
            Advice advice = new Advice(solution, evaluation);
            Advice.Rated best = advice.byShot(from, lie, Situation.ORDINARY).get(0);
            Advice.Rated attack = turned(advice, best, 1);
            best = calm(advice, best);
            Map<ApproachAnswer.Side, Double> strokes = sides(evaluation);
            double edge = hole.green().distanceToEdge(zone.place());
            OptionalDouble slope = slope(course);
            double bearing = from.bearingTo(zone.place());
            double east = best.target().x() - zone.place().x();
            double north = best.target().y() - zone.place().y();
            return new ApproachAnswer.Location(
                    zone.name(),
                    zone.place(),
                    from.distanceTo(zone.place()),
                    setup.round().ordinary().strikes().label(best.shot()),
                    best.target(),
                    east * Math.sin(bearing) + north * Math.cos(bearing),
                    east * Math.cos(bearing) - north * Math.sin(bearing),
                    best.expected(),
                    advice.finish(from, lie, Situation.ORDINARY, best).share().getOrDefault(Surface.GREEN, 0.0),
                    Math.max(0, attack.costBeside(best)),
                    attack.costError(best),
                    shortSide(),
                    strokes.entrySet().stream()
                            .min(Map.Entry.comparingByValue())
                            .map(Map.Entry::getKey)
                            .orElse(ApproachAnswer.Side.SHORT),
                    strokes,
                    edge,
                    slope,
                    warnings(edge, slope));
        }

        /** The aim turned as near to the hole as costs nothing that anybody would notice; else as it is. */
        private Advice.Rated calm(Advice advice, Advice.Rated best) {
            for (double share : new double[] {1, 2.0 / 3, 1.0 / 3}) {
                Advice.Rated turned = turned(advice, best, share);
                if (turned.costBeside(best) < UNNOTICED) {
                    return turned;
                }
            }
            return best;
        }

        /** The same shot as far, turned by a share of the way from its aim to the hole. */
        private Advice.Rated turned(Advice advice, Advice.Rated best, double share) {
            double aim = from.bearingTo(best.target());
            double turn = from.bearingTo(zone.place()) - aim;
            double bearing = aim + share * (turn - 2 * Math.PI * Math.rint(turn / (2 * Math.PI)));
            return advice.rate(
                    from, lie, Situation.ORDINARY, best.shot(), from.along(bearing, from.distanceTo(best.target())));
        }

        /** Strokes from off each side, square to the hole; beside the hole's own line where the side is left or right. */
        private Map<ApproachAnswer.Side, Double> sides(PolicyEvaluation evaluation) {
            Map<ApproachAnswer.Side, Double> out = new EnumMap<>(ApproachAnswer.Side.class);
            for (ApproachAnswer.Side side : ApproachAnswer.Side.values()) {
                double direction = direction(side);
                Place off = zone.place().along(direction, zones.toEdge(zone.place(), direction) + BESIDE_METRES);
                double strokes = evaluation.expectedFrom(off);
                if (Double.isFinite(strokes)) {
                    out.put(side, strokes);
                }
            }
            return out;
        }

        private double direction(ApproachAnswer.Side side) {
            return zones.bearing()
                    + switch (side) {
                        case LONG -> 0;
                        case RIGHT -> Math.PI / 2;
                        case SHORT -> Math.PI;
                        case LEFT -> -Math.PI / 2;
                    };
        }

        private ApproachAnswer.Side shortSide() {
            return List.of(ApproachAnswer.Side.values()).stream()
                    .min(Comparator.comparingDouble(s -> zones.toEdge(zone.place(), direction(s))))
                    .orElseThrow();
        }

        private OptionalDouble slope(Course course) {
            Optional<GreenSurface> measured = MeasuredGreen.find(course, hole);
            return measured.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Math.hypot(
                            measured.get()
                                    .slopeEast(zone.place().x(), zone.place().y()),
                            measured.get()
                                    .slopeNorth(zone.place().x(), zone.place().y())));
        }

        private static List<String> warnings(double edge, OptionalDouble slope) {
            List<String> out = new ArrayList<>();
            if (edge < LEAST_EDGE_METRES) {
                out.add(String.format(
                        Locale.ROOT,
                        "%.1f paces from the edge: less than the usual four",
                        Math.floor(10 * edge / PACE) / 10));
            }
            if (slope.isPresent() && slope.getAsDouble() > MOST_SLOPE) {
                out.add(String.format(
                        Locale.ROOT, "on a slope of %.1f %%: more than about 3", 100 * slope.getAsDouble()));
            }
            return out;
        }
    }
}
