package loopwright.boot;

import java.io.Reader;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Objects;
import loopwright.action.BenchStore;
import loopwright.action.Benchmarks;
import loopwright.action.ForecastRound;
import loopwright.action.KeepRounds;
import loopwright.action.LearnFromRounds;
import loopwright.action.PlanRound;
import loopwright.action.ReportPlayer;
import loopwright.action.ResultFile;
import loopwright.action.RoundReviews;
import loopwright.action.SplitRound;
import loopwright.action.TodayList;
import loopwright.action.Workroom;
import loopwright.adapter.book.PrintedBook;
import loopwright.adapter.chart.ChartedHoles;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.table.AuditFolder;
import loopwright.adapter.table.BenchmarkJson;
import loopwright.adapter.table.JsonPlayerFiles;
import loopwright.adapter.table.RoundCsv;
import loopwright.cli.CourseRulesVerb;
import loopwright.cli.ForecastVerb;
import loopwright.cli.LessonPlayVerb;
import loopwright.cli.LessonVerb;
import loopwright.cli.PlayerBreakVerb;
import loopwright.cli.PlayerFileVerb;
import loopwright.cli.PlayerLearnVerb;
import loopwright.cli.ReportVerb;
import loopwright.cli.RoundImportVerb;
import loopwright.cli.RoundListVerb;
import loopwright.cli.RoundVerb;
import loopwright.cli.StoreWork;
import loopwright.cli.TodayVerb;
import loopwright.scoring.TourBaseline;
import picocli.CommandLine;

/** Wires the verbs about what players have done: rounds, lessons, player files, the coach's list. */
final class RecordVerbs {
    private RecordVerbs() {}

    static void addTo(CommandLine line, ResultFile results, Reader keyboard) {
        Clock clock = Clock.system(ZoneId.systemDefault());
        StoreWork stores = new StoreWork(StoreVerbs::open);
        RoundCsv files = new RoundCsv();
        RoundReviews reviews = new RoundReviews(files, new OsmCourseFiles(), new TourBaseline());
        line.addSubcommand(new CommandLine(new RoundVerb(reviews, files, stores, results, keyboard, clock))
                .addSubcommand(new RoundImportVerb(reviews, files, stores, results))
                .addSubcommand(new RoundListVerb(stores, results)));
        line.addSubcommand(new CommandLine(new LessonVerb(stores, results, clock))
                .addSubcommand(new LessonPlayVerb(stores, StoreVerbs::room, planning(), files, keyboard, clock)));
        line.addSubcommand(new TodayVerb(stores, new TodayList(), results, clock));
        line.addSubcommand(new ReportVerb(stores, RecordVerbs::reports, new PrintedBook(), results));
        line.addSubcommand(new ForecastVerb(stores, RecordVerbs::forecasts, results, clock));
        Objects.requireNonNull(line.getSubcommands().get("course"))
                .addSubcommand(new CourseRulesVerb(stores, results, clock));
        Objects.requireNonNull(line.getSubcommands().get("player"))
                .addSubcommand(new PlayerFileVerb(stores, results, keyboard))
                .addSubcommand(new PlayerBreakVerb(stores, store -> Bench.keeping(StoreVerbs.room(store)), results))
                .addSubcommand(new PlayerLearnVerb(stores, RecordVerbs::learning, results));
    }

    private static PlanRound planning() {
        return new PlanRound(new OsmCourseFiles(), new JsonPlayerFiles(), new ChartedHoles(), AuditFolder::new);
    }

    /** Reports on the players of a store. */
    static ReportPlayer reports(BenchStore store) {
        Workroom room = StoreVerbs.room(store);
        return new ReportPlayer(
                room,
                new KeepRounds(store, new RoundCsv()),
                new Benchmarks(room, new OsmCourseFiles(), new JsonPlayerFiles(), new BenchmarkJson()),
                new SplitRound(room, new OsmCourseFiles(), new JsonPlayerFiles()),
                new TourBaseline());
    }

    static ForecastRound forecasts(BenchStore store) {
        return new ForecastRound(
                StoreVerbs.room(store),
                new KeepRounds(store, new RoundCsv()),
                new OsmCourseFiles(),
                new JsonPlayerFiles(),
                Bench.version());
    }

    static LearnFromRounds learning(BenchStore store) {
        return new LearnFromRounds(StoreVerbs.room(store), new KeepRounds(store, new RoundCsv()));
    }
}
