package loopwright.action;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.TeeSet;
import loopwright.course.TemporaryGreen;
import loopwright.player.Player;
import loopwright.player.PlayerProfile;
import loopwright.player.StrikeModel;
import loopwright.strategy.Ability;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.ScoreTable;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;

/** A round as it was asked for: course, tees, holes in playing order with their tables, day, player and greens. */
record RoundSetup(
        Course course,
        TeeSet tees,
        List<Hole> holes,
        List<ScoreTable> tables,
        PlanDay day,
        PlayerProfile profile,
        PlannedRound round,
        RoundGreens greens,
        Today today) {

    static RoundSetup read(PlanRequest request, PlanDay day, CourseFiles courses, PlayerFiles players) {
        return read(request, day, courses, players, new Flights());
    }

    static RoundSetup read(
            PlanRequest request, PlanDay day, CourseFiles courses, PlayerFiles players, Flights flights) {
        return of(courses.read(request.course()).course(), players.read(request.player()), request, day, flights);
    }

    /** The same for a course and a player that were read already, and perhaps changed. */
    static RoundSetup of(Course read, PlayerProfile usual, PlanRequest request, PlanDay day) {
        return of(read, usual, request, day, new Flights());
    }

    private static RoundSetup of(Course read, PlayerProfile usual, PlanRequest request, PlanDay day, Flights flights) {
        BagSwap.checkCount(usual.player().clubs());
        Today today = Today.of(request.today(), usual);
        PlayerProfile profile = today.apply(usual);
        Course course = TemporaryGreen.inPlay(read);
        for (String location : request.holeLocations()) {
            course = HoleLocations.apply(course, location);
        }
        TeeSet tees = tees(course, request.tees());
        List<Hole> holes = HoleNumberList.startingAt(request.startHole(), HoleNumberList.read(request.holes(), course));
        RoundGreens greens = new RoundGreens(course, profile.player().putting(), day.greens(), flights);
        PlannedRound round = PlannedRound.of(
                flights.strikes(profile.player(), day, course),
                profile.day(),
                greens.level(),
                request.seed(),
                request.forTarget() || request.howSure());
        List<ScoreTable> tables = request.counting().tables(course, holes);
        return new RoundSetup(course, tees, holes, tables, day, profile, round, greens, today);
    }

    static StrikeModel strikes(Player player, PlanDay day, Course course) {
        return new Flights().strikes(player, day, course);
    }

    static TeeSet tees(Course course, String wanted) {
        return course.findTeeSet(wanted)
                .orElseThrow(() -> new UserFault("There are no " + wanted + " tees on " + course.name() + "; it has "
                        + course.teeSets().stream().map(TeeSet::name).collect(Collectors.joining(", "))
                        + " (back, middle and forward always work)."));
    }

    /** A hole as a problem, without locks, on its own green. */
    HoleProblem problem(int i, RoundGreens.Green green) {
        Ability ability = round.ordinary();
        return new HoleProblem(
                new CourseMap(course, holes.get(i)),
                tees.getPlace(holes.get(i).number()).place(),
                ability,
                SolverSettings.STANDARD,
                ShotRules.FREE,
                green.odds());
    }

    /** The green of every hole played, in order. */
    List<RoundGreens.Green> everyGreen() {
        return IntStream.range(0, holes.size())
                .mapToObj(i -> greens.of(holes.get(i)))
                .toList();
    }
}
