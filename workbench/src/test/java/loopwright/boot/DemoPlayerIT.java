package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import loopwright.cli.Terminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * The committed {@code demo/player.json} is what the product makes of the demo's shots and putts, by the two commands a
 * user would type. With {@code -Dloopwright.demo.write=true} it is written anew.
 */
class DemoPlayerIT {
    @Test
    void theCommittedPlayerIsFittedFromTheCommittedShotsAndPutts(@TempDir Path folder) throws Exception {
        Path demo = Files.isDirectory(Path.of("demo")) ? Path.of("demo") : Path.of("..", "demo");
        Path shots = folder.resolve("from-shots.json");
        Path player = folder.resolve("player.json");
        type(
                "fit",
                "--shots",
                demo.resolve("shots.csv").toString(),
                "--level",
                "82",
                "--hand",
                "right",
                "--name",
                "invented player",
                "--out",
                shots.toString());
        type(
                "putt",
                "fit",
                "--putts",
                demo.resolve("putts.csv").toString(),
                "--player",
                shots.toString(),
                "--out",
                player.toString());
        Path committed = demo.resolve("player.json");
        if (Boolean.getBoolean("loopwright.demo.write")) {
            Files.writeString(committed, Files.readString(player));
        }
        assertThat(committed).hasSameTextualContentAs(player);
    }

    private static void type(String... words) {
        StringWriter err = new StringWriter();
        CommandLine line = Main.commandLine();
        line.setOut(new PrintWriter(new StringWriter())).setErr(new PrintWriter(err));
        assertThat(Terminal.run(line, words)).as(err.toString()).isZero();
    }
}
