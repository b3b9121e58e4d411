package loopwright.boot;

import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.file.Path;
import loopwright.action.CourseFiles;
import loopwright.action.CourseWalk;
import loopwright.action.DrawHoles;
import loopwright.action.ExpectRound;
import loopwright.action.FlyShot;
import loopwright.action.HandicapHistory;
import loopwright.action.HandicapSums;
import loopwright.action.PlanRound;
import loopwright.action.PuttAdviser;
import loopwright.action.PuttFitting;
import loopwright.action.ReadCourse;
import loopwright.action.ResultFile;
import loopwright.action.SurveyCourse;
import loopwright.adapter.book.PrintedBook;
import loopwright.adapter.chart.ChartedCourses;
import loopwright.adapter.chart.ChartedFlights;
import loopwright.adapter.chart.ChartedHoles;
import loopwright.adapter.chart.ChartedPutts;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.table.AuditFolder;
import loopwright.adapter.table.JsonPlayerFiles;
import loopwright.adapter.table.JsonResultFile;
import loopwright.adapter.table.PinSheetCsv;
import loopwright.adapter.table.PuttCsv;
import loopwright.adapter.table.ScoreHistoryCsv;
import loopwright.adapter.terrain.RasterTerrain;
import loopwright.cli.BookVerb;
import loopwright.cli.CourseCommand;
import loopwright.cli.CourseDrawCommand;
import loopwright.cli.CourseListCommand;
import loopwright.cli.CourseReadCommand;
import loopwright.cli.CourseSurveyCommand;
import loopwright.cli.CourseWalkCommand;
import loopwright.cli.DemoVerb;
import loopwright.cli.ExpectVerb;
import loopwright.cli.FlightVerb;
import loopwright.cli.HandicapVerb;
import loopwright.cli.Loopwright;
import loopwright.cli.PlanVerb;
import loopwright.cli.PuttFitVerb;
import loopwright.cli.PuttVerb;
import loopwright.cli.ServeVerb;
import loopwright.cli.Terminal;
import picocli.CommandLine;

/** Starts Loopwright from the command line. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        Logs.onlyWarnings();
        System.exit(Terminal.run(commandLine(), args));
    }

    /** The whole command line, wired. */
    static CommandLine commandLine() {
        return commandLine(new InputStreamReader(System.in, Charset.defaultCharset()));
    }

    /** The same with another keyboard. */
    static CommandLine commandLine(Reader keyboard) {
        ResultFile results = new JsonResultFile();
        CommandLine line = new CommandLine(new Loopwright());
        HandicapSums sums = new HandicapSums();
        HandicapHistory history = new HandicapHistory(new ScoreHistoryCsv(), sums);
        line.addSubcommand(new HandicapVerb(sums, history, results));
        line.addSubcommand(course(results));
        PlayerVerbs.addTo(line, results);
        RecordVerbs.addTo(line, results, keyboard);
        AnswerVerbs.addTo(line, results);
        StoreVerbs.addTo(line, keyboard);
        PracticeVerbs.addTo(line, results);
        line.addSubcommand(new ServeVerb(Bench::launch));
        line.addSubcommand(putt(results));
        line.addSubcommand(new FlightVerb(new FlyShot(new ChartedFlights()), results));
        line.addSubcommand(new ExpectVerb(new ExpectRound(new OsmCourseFiles(), new JsonPlayerFiles()), results));
        PlanRound planning =
                new PlanRound(new OsmCourseFiles(), new JsonPlayerFiles(), new ChartedHoles(), AuditFolder::new);
        line.addSubcommand(new PlanVerb(planning, new PinSheetCsv(), results));
        line.addSubcommand(new BookVerb(AnswerVerbs.book(planning), new PrintedBook(), new ChartedHoles(), results));
        Path home = Path.of(System.getProperty("loopwright.home", "."));
        line.addSubcommand(new DemoVerb(home.resolve("demo")));
        return line;
    }

    private static CommandLine putt(ResultFile results) {
        PuttFitting fitting = new PuttFitting(new PuttCsv(), new JsonPlayerFiles());
        return new CommandLine(new PuttVerb(new PuttAdviser(new ChartedPutts()), fitting, results))
                .addSubcommand(new PuttFitVerb(fitting, results));
    }

    private static CommandLine course(ResultFile results) {
        CourseFiles files = new OsmCourseFiles();
        ReadCourse read = new ReadCourse(files, new RasterTerrain(), new ChartedCourses(), results);
        return new CommandLine(new CourseCommand())
                .addSubcommand(new CourseReadCommand(read))
                .addSubcommand(new CourseDrawCommand(read, new DrawHoles(new ChartedHoles())))
                .addSubcommand(new CourseListCommand(read))
                .addSubcommand(new CourseSurveyCommand(new SurveyCourse(files)))
                .addSubcommand(new CourseWalkCommand(new CourseWalk(files), new PrintedBook()));
    }
}
