package loopwright.action;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.numerics.Watch;
import loopwright.scoring.BenchmarkMaker;
import loopwright.scoring.HoleCounts;
import loopwright.scoring.HoleEnd;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.Intent;
import loopwright.scoring.Lie;
import loopwright.scoring.RoundRecord;
import loopwright.scoring.ShotRecord;
import loopwright.units.Distance;

/**
 * A few holes played as a lesson, not a score: before each shot the player says what he means to do, then hears the engine's
 * options, which is advice and belongs into a lesson and never into a round (Rule 4.3).
 */
public final class PlayingLesson {
    static final int FEWEST_HOLES = 3;
    static final int MOST_HOLES = 9;
    private static final long SEED = 1;

    private final Workroom room;
    private final PlanRound planning;
    private final String player;
    private final Shelf.Entry course;
    private final String tees;
    private final LocalDate day;

    public PlayingLesson(
            Workroom room, PlanRound planning, String player, Shelf.Entry course, String tees, LocalDate day) {
        this.room = room;
        this.planning = planning;
        this.player = player;
        this.course = course;
        this.tees = tees;
        this.day = day;
    }

    /** Refuses fewer than three holes, more than nine, and holes the course does not have. */
    public void checkHoles(List<Integer> holes) {
        if (holes.size() < FEWEST_HOLES || holes.size() > MOST_HOLES) {
            throw new UserFault("A playing lesson has " + FEWEST_HOLES + " to " + MOST_HOLES + " holes, not "
                    + holes.size() + "; say them with --holes, such as 4-9.");
        }
        holes.forEach(number -> HoleNumberList.hole(number, room.course(course.id(), course.version())));
    }

    /** A hole of the lesson, solved for the player as he is known, to the hole location of the day where one is kept. */
    public SolvedHole solve(int hole, Watch watch) {
        Shelf.Document known = room.store().players().get(player);
        List<String> locations = Optional.ofNullable(room.store()
                        .listHoleLocations(course.id(), day.toString())
                        .get(hole))
                .map(l -> List.of(hole + ":" + l))
                .orElse(List.of());
        return planning.solveHole(
                PlanRequest.usual(
                        room.courseFile(course.id(), course.version()),
                        room.playerFile(player, known.version()),
                        tees,
                        0,
                        String.valueOf(hole),
                        locations,
                        List.of(),
                        List.of(),
                        SEED),
                watch);
    }

    /** A stroke of the lesson; {@code penalties} came after it. */
    public static ShotRecord shot(
            SolvedHole hole,
            Place ball,
            String club,
            Optional<Place> aim,
            Optional<Lie> finish,
            int penalties,
            Optional<Boolean> asMeant) {
        LocalFrame frame = new LocalFrame(hole.course().origin());
        return new ShotRecord(
                Optional.of(club).filter(c -> !c.isEmpty()),
                BenchmarkMaker.lieOf(hole.lieAt(ball)),
                Distance.ofMetres(ball.distanceTo(hole.hole().holeLocation())),
                Optional.of(frame.toLatLon(ball)),
                penalties,
                Optional.empty(),
                new Intent(Optional.empty(), aim.map(frame::toLatLon), finish, asMeant));
    }

    /** A hole of the lesson as a record; picked up unless it was holed. */
    public static HoleRecord hole(SolvedHole hole, List<ShotRecord> shots, boolean holed) {
        return new HoleRecord(
                hole.hole().number(),
                OptionalInt.of(hole.hole().par()),
                Optional.of(Distance.ofMetres(hole.plan().lengthMetres())),
                OptionalInt.empty(),
                holed ? HoleEnd.HOLED : HoleEnd.PICKED_UP,
                Set.of(),
                HoleCounts.NONE,
                shots,
                Optional.empty());
    }

    /** The lesson as a round that is no score. */
    public RoundRecord record(List<HoleRecord> holes) {
        return new RoundRecord(
                "lesson " + day,
                Optional.of(day.toString()),
                Optional.of(course.name()),
                Optional.of(tees),
                Optional.empty(),
                false,
                true,
                holes);
    }
}
