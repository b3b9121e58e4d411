package loopwright.boot;

import java.time.Clock;
import java.time.ZoneId;
import loopwright.action.DrillCards;
import loopwright.action.JobBoard;
import loopwright.action.PlanPractice;
import loopwright.action.PracticeBench;
import loopwright.action.RememberedCourses;
import loopwright.action.RememberedPlayers;
import loopwright.action.ResultFile;
import loopwright.action.Workroom;
import loopwright.adapter.chart.ChartedPractice;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.table.CalendarIcs;
import loopwright.adapter.table.DrillJson;
import loopwright.adapter.table.JsonPlayerFiles;
import loopwright.adapter.table.LearningJson;
import loopwright.cli.PracticeCommand;
import loopwright.cli.PracticeDrillsVerb;
import loopwright.cli.PracticeLogVerb;
import loopwright.cli.PracticeNextVerb;
import loopwright.cli.PracticeOutlets;
import loopwright.cli.PracticePlanVerb;
import loopwright.cli.PracticeReviewVerb;
import loopwright.cli.StoreWork;
import picocli.CommandLine;

/** Wires the verbs of practice. */
final class PracticeVerbs {
    private PracticeVerbs() {}

    /** Practice for the bench. */
    static PracticeBench bench(Workroom room, JobBoard board, Clock clock) {
        return new PracticeBench(
                room,
                board,
                new PlanPractice(
                        new RememberedCourses(new OsmCourseFiles()), new RememberedPlayers(new JsonPlayerFiles())),
                new DrillCards(new DrillJson()),
                new ChartedPractice(),
                new CalendarIcs(clock));
    }

    static void addTo(CommandLine line, ResultFile results) {
        Clock clock = Clock.system(ZoneId.systemDefault());
        StoreWork stores = new StoreWork(StoreVerbs::open);
        DrillCards cards = new DrillCards(new DrillJson());
        ChartedPractice pictures = new ChartedPractice();
        PlanPractice plan = new PlanPractice(new OsmCourseFiles(), new JsonPlayerFiles());
        PracticeOutlets outlets = new PracticeOutlets(new LearningJson(), pictures, new CalendarIcs(clock), results);
        line.addSubcommand(new CommandLine(new PracticeCommand())
                .addSubcommand(new PracticePlanVerb(plan, cards, outlets, clock))
                .addSubcommand(new PracticeDrillsVerb(cards, new JsonPlayerFiles(), pictures, results))
                .addSubcommand(new PracticeNextVerb(stores, StoreVerbs::room, plan, cards, outlets, clock))
                .addSubcommand(new PracticeLogVerb(stores, StoreVerbs::room, cards, clock))
                .addSubcommand(new PracticeReviewVerb(stores, StoreVerbs::room, cards, results)));
    }
}
