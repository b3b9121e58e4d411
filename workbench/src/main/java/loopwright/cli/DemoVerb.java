package loopwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright demo}: runs the main job on the invented demo, printing each command so that it can be repeated. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = "Reads the invented demo course, fits the invented player and plans his round.")
public final class DemoVerb implements Callable<Integer> {
    private final Path demo;

    @Option(
            names = "--out",
            defaultValue = "demo-out",
            paramLabel = "DIR",
            description = "Folder for everything that is written. Default: ${DEFAULT-VALUE}.")
    private Path out = Path.of("demo-out");

    @Spec
    private @Nullable CommandSpec spec;

    /** The folder holds course.geojson, shots.csv and putts.csv. */
    public DemoVerb(Path demo) {
        this.demo = demo;
    }

    @Override
    public Integer call() {
        CommandLine root = Objects.requireNonNull(spec).parent().commandLine();
        PrintWriter page = root.getOut();
        makeFolder();
        for (List<String> command : commands()) {
            page.println("$ ./loopwright " + String.join(" ", command));
            int code = root.execute(command.toArray(String[]::new));
            if (code != 0) {
                return code;
            }
            page.println();
        }
        page.println(
                "Everything is in " + out + ": look at course.png, patterns.png and holes/hole-01.png to hole-18.png.");
        return 0;
    }

    private void makeFolder() {
        try {
            Files.createDirectories(out);
        } catch (IOException e) {
            throw new UserFault("The folder " + out + " cannot be made: " + e.getMessage() + ".", e);
        }
    }

    private List<List<String>> commands() {
        String course = demo.resolve("course.geojson").toString();
        String player = out.resolve("player.json").toString();
        return List.of(
                List.of("course", "read", course, "--picture", in("course.png"), "--out", in("course.geojson")),
                List.of(
                        "fit",
                        "--shots",
                        demo.resolve("shots.csv").toString(),
                        "--level",
                        "82",
                        "--name",
                        "Sample",
                        "--out",
                        player,
                        "--picture",
                        in("patterns.png")),
                List.of(
                        "putt",
                        "fit",
                        "--putts",
                        demo.resolve("putts.csv").toString(),
                        "--level",
                        "82",
                        "--player",
                        player,
                        "--out",
                        player),
                List.of(
                        "plan",
                        "--course",
                        course,
                        "--player",
                        player,
                        "--tees",
                        "middle",
                        "--target",
                        "79",
                        "--json",
                        in("plan.json"),
                        "--picture",
                        in("holes")));
    }

    private String in(String name) {
        return out.resolve(name).toString();
    }
}
