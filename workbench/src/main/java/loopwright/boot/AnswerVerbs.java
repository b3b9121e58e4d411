package loopwright.boot;

import loopwright.action.ApproachAdviser;
import loopwright.action.CompareBags;
import loopwright.action.CompareTees;
import loopwright.action.MakeBook;
import loopwright.action.PlanRound;
import loopwright.action.ResultFile;
import loopwright.action.ShortGame;
import loopwright.action.WedgeAdviser;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.table.JsonPlayerFiles;
import loopwright.adapter.table.PinSheetCsv;
import loopwright.cli.ApproachVerb;
import loopwright.cli.BagVerb;
import loopwright.cli.ShortGameVerb;
import loopwright.cli.TeesVerb;
import loopwright.cli.WedgesVerb;
import picocli.CommandLine;

/** Wires the verbs that answer what lies round a plan: tees, clubs, short shots. */
final class AnswerVerbs {
    private AnswerVerbs() {}

    /** What makes books asks the same advisers as the verbs. */
    static MakeBook book(PlanRound planning) {
        return new MakeBook(
                planning,
                new ApproachAdviser(new OsmCourseFiles(), new JsonPlayerFiles(), new PinSheetCsv()),
                new WedgeAdviser(new JsonPlayerFiles()));
    }

    static void addTo(CommandLine line, ResultFile results) {
        line.addSubcommand(new ApproachVerb(
                new ApproachAdviser(new OsmCourseFiles(), new JsonPlayerFiles(), new PinSheetCsv()), results));
        line.addSubcommand(new BagVerb(new CompareBags(new OsmCourseFiles(), new JsonPlayerFiles()), results));
        line.addSubcommand(new ShortGameVerb(new ShortGame(new JsonPlayerFiles()), results));
        line.addSubcommand(new TeesVerb(new CompareTees(new OsmCourseFiles(), new JsonPlayerFiles()), results));
        line.addSubcommand(new WedgesVerb(new WedgeAdviser(new JsonPlayerFiles()), results));
    }
}
