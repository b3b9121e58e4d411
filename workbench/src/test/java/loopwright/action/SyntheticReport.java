package loopwright.action;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeeSet;
import loopwright.demo.DemoCourse;
import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.scoring.ClubMiss;
import loopwright.scoring.HoleCounts;
import loopwright.scoring.HoleEnd;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.Lie;
import loopwright.scoring.Obstacle;
import loopwright.scoring.OrdinaryMiss;
import loopwright.scoring.RoundRecord;
import loopwright.scoring.RoundReview;
import loopwright.scoring.ScoreGap;
import loopwright.scoring.ShotAttribution;
import loopwright.scoring.ShotRecord;
import loopwright.scoring.TourBaseline;
import loopwright.units.Distance;

/** Synthetic test data: a report on a made-up round over all holes of the demo course, as full as a report can be. */
public final class SyntheticReport {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 31);

    private SyntheticReport() {}

    public static PlayerReport create() {
        Course course = DemoCourse.create();
        TeeSet tees = course.findTeeSet("middle").orElseThrow();
        RoundRecord round = round(course, tees);
        RoundReview review = RoundReview.of(round, new TourBaseline());
        return new PlayerReport(
                "A player with a name of some length",
                84,
                12,
                new KeptRound(
                        "r",
                        DAY,
                        course.name(),
                        "middle",
                        18,
                        round.score(),
                        round.tier().name(),
                        false,
                        Instant.EPOCH),
                round,
                review,
                Optional.of(review),
                Optional.of(review),
                causes(course),
                ordinary(),
                Optional.of(gap()),
                List.of(
                        new ClubMiss("driver", 14, -0.02, 0.01, 1.2, 0, 0, 0, 0, 0, 0),
                        new ClubMiss("7-iron", 2, 0, 0, 1, 30, 5, 6, 7, 1, 11)),
                new Standing(List.of(), 0, 0),
                Optional.of(new PlayerReport.Ground(course, tees)),
                List.of(new KeptLesson(
                        "l", DAY, "", "", "50 putts from 4 ft", Optional.of(DAY.plusDays(7)), false, Instant.EPOCH)),
                Optional.of(new KeptForecast(
                        "f", DAY.plusDays(6), course.name(), "middle", 18, 84, 86.2, 3.1, 0.31, "0", Instant.EPOCH)));
    }

    /** Five strokes a hole; the third from a place that was not noted. */
    private static RoundRecord round(Course course, TeeSet tees) {
        LocalFrame frame = new LocalFrame(course.origin());
        List<HoleRecord> holes = new ArrayList<>();
        for (Hole hole : course.holes()) {
            var line = hole.lineFrom(tees.getPlace(hole.number()).place());
            List<ShotRecord> shots = new ArrayList<>();
            Lie[] lies = {Lie.TEE, Lie.FAIRWAY, Lie.ROUGH, Lie.GREEN, Lie.GREEN};
            double[] left = {1, 0.45, 0.12, 0.02, 0.003};
            for (int i = 0; i < left.length; i++) {
                double metres = left[i] * line.lengthMetres();
                Place at = line.placeAt(line.lengthMetres() - metres).offset(0, 0, i * 3);
                Optional<LatLon> noted = i == 2 ? Optional.empty() : Optional.of(frame.toLatLon(at));
                shots.add(new ShotRecord(
                        Optional.of("7-iron"), lies[i], Distance.ofMetres(metres), noted, i == 1 ? 1 : 0));
            }
            holes.add(new HoleRecord(
                    hole.number(),
                    OptionalInt.of(hole.par()),
                    Optional.empty(),
                    OptionalInt.empty(),
                    HoleEnd.HOLED,
                    Set.of(),
                    HoleCounts.NONE,
                    shots,
                    Optional.empty()));
        }
        return new RoundRecord(
                "r",
                Optional.of(DAY.toString()),
                Optional.of(course.name()),
                Optional.of("middle"),
                Optional.empty(),
                false,
                false,
                holes);
    }

    private static List<ShotAttribution> causes(Course course) {
        List<ShotAttribution> out = new ArrayList<>();
        for (Hole hole : course.holes()) {
            for (int shot = 1; shot <= 3; shot++) {
                out.add(new ShotAttribution(
                        hole.number(),
                        shot,
                        "pitching wedge three-quarter",
                        ShotAttribution.Knowledge.TWO_PARTS,
                        0.3,
                        -0.1,
                        0.02,
                        0.01,
                        OptionalDouble.of(0.3)));
            }
        }
        return out;
    }

    private static List<OrdinaryMiss> ordinary() {
        return List.of(new OrdinaryMiss(3, 1, "7-iron", Distance.ofYards(150), Distance.ofFeet(32), 0.6));
    }

    private static ScoreGap gap() {
        List<ScoreGap.Row> rows = new ArrayList<>();
        for (Obstacle o : Obstacle.values()) {
            double cost = 2.5 - rows.size();
            rows.add(new ScoreGap.Row(o, cost, cost - 1, cost + 1, 12));
        }
        return new ScoreGap(rows, List.of(Obstacle.DOUBLES, Obstacle.PENALTIES), 12, 30);
    }
}
