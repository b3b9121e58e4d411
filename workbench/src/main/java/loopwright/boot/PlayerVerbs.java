package loopwright.boot;

import loopwright.action.CheckPlayer;
import loopwright.action.FitPlayer;
import loopwright.action.MeasuringSheet;
import loopwright.action.ResultFile;
import loopwright.adapter.book.PrintedBook;
import loopwright.adapter.chart.ChartedPatterns;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.table.JsonPlayerFiles;
import loopwright.adapter.table.PlainTextFile;
import loopwright.adapter.table.ScoreCsv;
import loopwright.adapter.table.ShotCsv;
import loopwright.cli.FitVerb;
import loopwright.cli.PlayerCheckVerb;
import loopwright.cli.PlayerCommand;
import loopwright.cli.PlayerNewVerb;
import loopwright.cli.PlayerSheetVerb;
import picocli.CommandLine;

/** Wires the verbs that make players. */
final class PlayerVerbs {
    private PlayerVerbs() {}

    static void addTo(CommandLine line, ResultFile results) {
        CheckPlayer check = new CheckPlayer(new OsmCourseFiles(), new JsonPlayerFiles(), new ScoreCsv());
        FitPlayer fit = new FitPlayer(new ShotCsv(), new JsonPlayerFiles(), results, new ChartedPatterns());
        line.addSubcommand(new FitVerb(fit));
        line.addSubcommand(new CommandLine(new PlayerCommand())
                .addSubcommand(new PlayerNewVerb(fit))
                .addSubcommand(new PlayerCheckVerb(check, results))
                .addSubcommand(new PlayerSheetVerb(new MeasuringSheet(new PlainTextFile()), new PrintedBook())));
    }
}
