package loopwright.boot;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import loopwright.action.Accounts;
import loopwright.action.Attempts;
import loopwright.action.BenchStore;
import loopwright.action.CarryStore;
import loopwright.action.CompareTees;
import loopwright.action.CourseChoice;
import loopwright.action.CourseWalk;
import loopwright.action.ExpectRound;
import loopwright.action.FitPlayer;
import loopwright.action.GuardedStore;
import loopwright.action.JobBoard;
import loopwright.action.KeepPlayer;
import loopwright.action.KeepRounds;
import loopwright.action.MeasuringSheet;
import loopwright.action.PlanAnswers;
import loopwright.action.PlanBench;
import loopwright.action.PlanRound;
import loopwright.action.PlayerReports;
import loopwright.action.PrintBench;
import loopwright.action.PuttAdviser;
import loopwright.action.PuttFitting;
import loopwright.action.RememberedCourses;
import loopwright.action.RememberedPlayers;
import loopwright.action.ShortGame;
import loopwright.action.TakeRounds;
import loopwright.action.TodayList;
import loopwright.action.UserFault;
import loopwright.action.Visits;
import loopwright.action.WedgeAdviser;
import loopwright.action.Workroom;
import loopwright.adapter.book.PrintedBook;
import loopwright.adapter.chart.ChartedCourses;
import loopwright.adapter.chart.ChartedHoles;
import loopwright.adapter.chart.ChartedPatterns;
import loopwright.adapter.chart.ChartedPutts;
import loopwright.adapter.chart.ScreenedHoles;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.table.AuditFolder;
import loopwright.adapter.table.JsonPlayerFiles;
import loopwright.adapter.table.JsonResultFile;
import loopwright.adapter.table.PlainTextFile;
import loopwright.adapter.table.PuttCsv;
import loopwright.adapter.table.RoundCsv;
import loopwright.adapter.table.ShotCsv;
import loopwright.adapter.terrain.RasterImages;
import loopwright.adapter.terrain.RasterTerrain;
import loopwright.cli.StoreOptions;
import loopwright.scoring.TourBaseline;
import loopwright.web.AnswerPlace;
import loopwright.web.BenchServer;
import loopwright.web.CourseHeightsPlace;
import loopwright.web.CourseImagePlace;
import loopwright.web.CoursePlace;
import loopwright.web.DataPlace;
import loopwright.web.Doors;
import loopwright.web.EntryPlace;
import loopwright.web.Gate;
import loopwright.web.GreenPlace;
import loopwright.web.HolePlace;
import loopwright.web.JobPlace;
import loopwright.web.LoginPlace;
import loopwright.web.PeoplePlace;
import loopwright.web.PlanPlace;
import loopwright.web.PlayerPlace;
import loopwright.web.PracticePlace;
import loopwright.web.PrintPlace;
import loopwright.web.RoundsPlace;
import loopwright.web.SpotPlace;
import loopwright.web.TodayPlace;

/** The bench, wired: store, background work and server, closed together. */
final class Bench implements AutoCloseable {
    private final BenchStore store;
    private final JobBoard board;
    private final BenchServer server;

    private Bench(BenchStore opened, Doors doors) {
        this.store = opened;
        Visits visits = new Visits();
        GuardedStore guarded = new GuardedStore(opened, visits);
        Workroom room = StoreVerbs.room(guarded);
        Clock clock = Clock.systemUTC();
        Gate gate = new Gate(doors, visits, opened.access(), clock);
        Accounts accounts = StoreVerbs.accounts(opened.access());
        PlanRound planning = new PlanRound(
                new RememberedCourses(new OsmCourseFiles()),
                new RememberedPlayers(new JsonPlayerFiles()),
                new ChartedHoles(),
                AuditFolder::new);
        board = new JobBoard(room);
        PlanBench plans = new PlanBench(room, planning, board, clock, version());
        PlayerReports reports = new PlayerReports(room, RecordVerbs.reports(guarded), board);
        ScreenedHoles screens = new ScreenedHoles();
        server = new BenchServer(
                store.folder(),
                gate,
                List.of(
                        new LoginPlace(gate, accounts, new Attempts(clock), room),
                        new PeoplePlace(room, accounts, gate),
                        new TodayPlace(room, new TodayList(), clock),
                        rounds(guarded, room, reports, clock),
                        new EntryPlace(room, plans, screens),
                        new PlanPlace(room, plans),
                        new HolePlace(room, plans, screens),
                        new SpotPlace(room, plans, screens),
                        new AnswerPlace(room, plans, new PlanAnswers(room, advisers(), board)),
                        new PrintPlace(room, prints(room, planning, board), reports),
                        new JobPlace(board),
                        new PracticePlace(room, PracticeVerbs.bench(room, board, clock), clock),
                        new CoursePlace(room, StoreVerbs.carrying(room), new ChartedCourses(), screens),
                        new CourseImagePlace(room, new RasterImages(clock)),
                        new CourseHeightsPlace(room, new RasterTerrain()),
                        new PlayerPlace(room, keeping(room)),
                        new GreenPlace(room, new PuttAdviser(new ChartedPutts())),
                        new DataPlace(room, StoreVerbs.carrying(room))));
    }

    private static PlanAnswers.Advisers advisers() {
        RememberedCourses courses = new RememberedCourses(new OsmCourseFiles());
        RememberedPlayers players = new RememberedPlayers(new JsonPlayerFiles());
        return new PlanAnswers.Advisers(
                new CompareTees(courses, players),
                new ExpectRound(courses, players),
                new WedgeAdviser(players),
                new ShortGame(players));
    }

    private static PrintBench prints(Workroom room, PlanRound planning, JobBoard board) {
        return new PrintBench(
                room,
                AnswerVerbs.book(planning),
                new PrintedBook(),
                new ChartedHoles(),
                new CourseWalk(new OsmCourseFiles()),
                new MeasuringSheet(new PlainTextFile()),
                board);
    }

    private static RoundsPlace rounds(BenchStore store, Workroom room, PlayerReports reports, Clock clock) {
        KeepRounds keeping = new KeepRounds(store, new RoundCsv());
        return new RoundsPlace(
                room, keeping, new TakeRounds(keeping, new RoundCsv()), reports, new TourBaseline(), clock);
    }

    static KeepPlayer keeping(Workroom room) {
        JsonPlayerFiles players = new JsonPlayerFiles();
        ChartedPatterns pictures = new ChartedPatterns();
        return new KeepPlayer(
                room,
                players,
                new FitPlayer(new ShotCsv(), players, new JsonResultFile(), pictures),
                new PuttFitting(new PuttCsv(), players),
                pictures);
    }

    /** A bench on a store; with {@code demo} the invented course and player are put on empty shelves. */
    static Bench on(StoreOptions.Where where, boolean demo) {
        return on(where, demo, Doors.HERE);
    }

    static Bench on(StoreOptions.Where where, boolean demo, Doors doors) {
        BenchStore store = StoreVerbs.open(where);
        try {
            if (doors.locked() && !Accounts.hasCoach(store.access())) {
                throw new UserFault(
                        "This bench has no coach yet, and whoever reaches it could do everything; add one first"
                                + " with \"loopwright coach add NAME\", or serve it to this computer alone.");
            }
            if (demo) {
                fill(store);
            }
            return new Bench(store, doors);
        } catch (RuntimeException e) {
            store.close();
            throw e;
        }
    }

    private static void fill(BenchStore store) {
        Path demo = Path.of(System.getProperty("loopwright.home", ".")).resolve("demo");
        CarryStore carry = StoreVerbs.carrying(StoreVerbs.room(store));
        if (store.courses().list().isEmpty()) {
            carry.importFile(demo.resolve("course.geojson"), "the demo course", CourseChoice.ONLY, false);
        }
        if (store.players().list().isEmpty()) {
            carry.importFile(demo.resolve("player.json"), "the demo player", CourseChoice.ONLY, false);
        }
    }

    static String version() {
        String version = Bench.class.getPackage().getImplementationVersion();
        return version == null ? "built from source" : version;
    }

    int start(int port) {
        return server.start(port);
    }

    /** Starts a bench that closes when the program ends. */
    static int launch(
            StoreOptions.Where where, boolean demo, String host, java.util.Optional<java.net.URI> address, int port) {
        Bench bench = on(where, demo, new Doors(host, address));
        Runtime.getRuntime().addShutdownHook(new Thread(bench::close));
        return bench.start(port);
    }

    @Override
    public void close() {
        board.close(); // whoever follows work is told while the server still answers
        server.close();
        store.close();
    }
}
