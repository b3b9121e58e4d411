package loopwright.boot;

import java.io.Reader;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import loopwright.action.ResultFile;
import loopwright.action.RoundReviews;
import loopwright.action.TodayList;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.table.RoundCsv;
import loopwright.cli.LessonVerb;
import loopwright.cli.PlayerBreakVerb;
import loopwright.cli.PlayerFileVerb;
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
        line.addSubcommand(new LessonVerb(stores, results, clock));
        line.addSubcommand(new TodayVerb(stores, new TodayList(List.of()), results, clock));
        Objects.requireNonNull(line.getSubcommands().get("player"))
                .addSubcommand(new PlayerFileVerb(stores, results, keyboard))
                .addSubcommand(new PlayerBreakVerb(stores, results));
    }
}
