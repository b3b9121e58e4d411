package loopwright.action;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.TeeSet;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.player.DayEffect;
import loopwright.strategy.MeasuredGreen;
import loopwright.strategy.ScoreDistribution;
import loopwright.strategy.SearchLoss;

/** Synthetic test data: the book of any course around a made-up plan, worded by the program itself. No golf is computed. */
public final class SyntheticBook {
    private SyntheticBook() {}

    public static Book of(Course course, LengthUnit unit) {
        RoundPlan plan = plan(course);
        HolePages holes = new HolePages(plan, unit);
        CardPages cards = new CardPages(plan, unit);
        List<Book.Page> pages = new ArrayList<>();
        pages.add(cards.cover("A. Player", "no wind; 24 C; ordinary ground; greens 10 ft"));
        for (RoundPlan.HolePlan h : plan.holes()) {
            Hole hole = course.getHole(h.number());
            pages.add(holes.hole(h, briefing()));
            pages.add(holes.green(h, approach(hole), HolePages.slopes(MeasuredGreen.find(course, hole), hole)));
        }
        pages.add(cards.card(n -> briefing(), n -> approach(course.getHole(n))));
        pages.add(cards.expectations(holes, Optional.empty()));
        pages.add(cards.wedges(wedges()));
        pages.add(cards.pencilCard());
        return new Book("Book of " + course.name(), unit, pages);
    }

    public static RoundPlan plan(Course course) {
        TeeSet tees = course.teeSets().get(course.teeSets().size() / 2);
        List<RoundPlan.HolePlan> holes =
                course.holes().stream().map(h -> hole(course, tees, h)).toList();
        return new RoundPlan(
                course,
                tees,
                PlanDay.USUAL,
                79,
                Counting.STROKES,
                holes,
                List.of(),
                ScoreDistribution.of(79, new double[] {0.2, 0.3, 0.5}),
                84,
                new RoundPlan.Simulated(80, 0.1, 100),
                DayEffect.ASSUMED,
                Today.USUAL,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static RoundPlan.HolePlan hole(Course course, TeeSet tees, Hole hole) {
        Place tee = tees.getPlace(hole.number()).place();
        Line line = hole.lineFrom(tee);
        List<RoundPlan.ShotPlan> shots = new ArrayList<>();
        Place from = tee;
        double at = 0;
        double[] lengths = {212, 165, 140, 110, 90};
        while (at < line.lengthMetres() - 20 && shots.size() < 4) {
            double next = Math.min(line.lengthMetres(), at + lengths[shots.size()]);
            Place aim = line.placeAt(next).offset(from.bearingTo(line.placeAt(next)), 0, -4);
            shots.add(shot(course, hole, from, aim, shots.size()));
            from = line.placeAt(next);
            at = next;
        }
        return new RoundPlan.HolePlan(
                hole.number(),
                hole.par(),
                line.lengthMetres(),
                tee,
                tees.getPlace(hole.number()).standsIn().orElse(""),
                hole.survey().complete(),
                hole.greenAssumed(),
                false,
                hole.par() + 0.7,
                scores(hole.par()),
                0.12,
                shots,
                startLines(shots.get(0)),
                OptionalDouble.empty(),
                hole.par() + 0.9,
                0.01,
                new SearchLoss(0.01, 0.01));
    }

    private static List<RoundPlan.StartLine> startLines(RoundPlan.ShotPlan tee) {
        double bearing = tee.from().bearingTo(tee.aim());
        return List.of(
                line(tee, RoundPlan.BallsGo.AS_USUAL, bearing, tee.landmark()),
                line(tee, RoundPlan.BallsGo.LEFT, bearing + 0.04, "9 paces right of the line of play"),
                line(tee, RoundPlan.BallsGo.RIGHT, bearing - 0.04, "the left edge of the right bunker"));
    }

    private static RoundPlan.StartLine line(
            RoundPlan.ShotPlan tee, RoundPlan.BallsGo balls, double bearing, String landmark) {
        return new RoundPlan.StartLine(balls, 0, tee.from().along(bearing, tee.aimMetres()), 0, landmark, 0.05, 0.01);
    }

    private static List<Double> scores(int par) {
        List<Double> out = new ArrayList<>(Collections.nCopies(par + 6, 0.0));
        out.set(par - 1, 0.05);
        out.set(par, 0.4);
        out.set(par + 1, 0.35);
        out.set(par + 2, 0.2);
        return out;
    }

    private static RoundPlan.ShotPlan shot(Course course, Hole hole, Place from, Place aim, int number) {
        CourseMap map = new CourseMap(course, hole);
        double bearing = from.bearingTo(aim);
        double length = from.distanceTo(aim);
        SplittableRandom random = new SplittableRandom(hole.number());
        List<Place> sample = new ArrayList<>();
        Map<Surface, Double> finish = new EnumMap<>(Surface.class);
        for (int i = 0; i < 400; i++) {
            Place p = aim.offset(bearing, 0.06 * length * random.nextGaussian(), 0.06 * length * random.nextGaussian());
            sample.add(p);
            finish.merge(map.surfaceAt(p), 1.0 / 400, Double::sum);
        }
        Rooms rooms = new Rooms(map);
        boolean approach = aim.distanceTo(hole.holeLocation()) < 25;
        RoundPlan.Alternative habit = new RoundPlan.Alternative("driver", aim, 0, 0.2, 0.01, false);
        return new RoundPlan.ShotPlan(
                from,
                number == 0 ? Surface.TEE : Surface.FAIRWAY,
                from.distanceTo(hole.holeLocation()),
                number == 0 ? "driver" : approach ? "56-wedge three-quarter" : "5-hybrid",
                aim,
                length,
                -4,
                number == 0 ? "the right edge of the left penalty area" : "the left edge of the right bunker",
                number == 1,
                new RoundPlan.Start(aim, from.along(bearing, 2), 0, 0),
                false,
                Optional.empty(),
                hole.par() + 0.7 - number,
                finish,
                sample,
                rooms.across(from, bearing, length),
                approach ? Optional.empty() : rooms.at(from, bearing, length, sample),
                List.of(new RoundPlan.Alternative("3-wood", aim, 5, 0.06, 0.01, false)),
                habit,
                List.of(
                        new RoundPlan.Risk("on or by a tee of hole 12", 0.04, SafetyCheck.WORTH_A_WARNING),
                        new RoundPlan.Risk("on a path", 0.07, SafetyCheck.WORTH_A_WARNING_ON_A_PATH)));
    }

    private static HoleBriefing briefing() {
        return new HoleBriefing(
                0.08,
                List.of("out of bounds", "woods"),
                Optional.of(new HoleBriefing.SideMiss(true, 0.3)),
                List.of(
                        new HoleBriefing.WindChoice(HoleBriefing.WindSide.HURTING, "driver", 0),
                        new HoleBriefing.WindChoice(HoleBriefing.WindSide.HELPING, "3-wood", 1),
                        new HoleBriefing.WindChoice(HoleBriefing.WindSide.FROM_LEFT, "driver", -12),
                        new HoleBriefing.WindChoice(HoleBriefing.WindSide.FROM_RIGHT, "driver", 11)));
    }

    private static ApproachAnswer.HoleApproach approach(Hole hole) {
        GreenZones zones = new GreenZones(hole);
        List<ApproachAnswer.Location> out = new ArrayList<>();
        for (GreenZones.Zone zone : zones.all()) {
            double beyond = out.size() % 2 == 0 ? 0 : -3;
            double right = out.size() % 3 - 1;
            out.add(new ApproachAnswer.Location(
                    zone.name(),
                    zone.place(),
                    140,
                    "8-iron",
                    zone.place().offset(zones.bearing(), beyond, right),
                    beyond,
                    right,
                    2.9,
                    0.6,
                    0.1,
                    0.01,
                    ApproachAnswer.Side.LEFT,
                    ApproachAnswer.Side.SHORT,
                    Map.of(ApproachAnswer.Side.SHORT, 2.6, ApproachAnswer.Side.LEFT, 3.2),
                    6,
                    OptionalDouble.empty(),
                    List.of()));
        }
        Place from = hole.line().placeAt(hole.line().lengthMetres() / 2);
        return new ApproachAnswer.HoleApproach(hole.number(), hole.par(), from, Surface.FAIRWAY, 140, false, out);
    }

    private static WedgeTable wedges() {
        List<WedgeTable.Row> rows = new ArrayList<>();
        for (int yards = 20; yards <= 130; yards += 5) {
            rows.add(new WedgeTable.Row(yards * 0.9144, "56-wedge three-quarter", 2.8, 0.01, 0.7, 9, Optional.empty()));
        }
        return new WedgeTable(
                "A. Player", Surface.FAIRWAY, LengthUnit.YARDS, List.of(), rows, List.of(), List.of("56-wedge half"));
    }
}
