package loopwright.boot;

import loopwright.action.PlanPractice;
import loopwright.action.ResultFile;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.table.JsonPlayerFiles;
import loopwright.cli.PracticeCommand;
import loopwright.cli.PracticePlanVerb;
import picocli.CommandLine;

/** Wires the verbs of practice. */
final class PracticeVerbs {
    private PracticeVerbs() {}

    static void addTo(CommandLine line, ResultFile results) {
        PlanPractice plan = new PlanPractice(new OsmCourseFiles(), new JsonPlayerFiles());
        line.addSubcommand(new CommandLine(new PracticeCommand()).addSubcommand(new PracticePlanVerb(plan, results)));
    }
}
