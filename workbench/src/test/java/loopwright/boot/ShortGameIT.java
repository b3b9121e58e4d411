package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The short-game table of the demo player, as it is typed. */
class ShortGameIT {
    private static final String PLAYER = Path.of("..", "demo", "player.json").toString();

    @TempDir
    Path folder;

    @Test
    void shotsCompeteByLieDistanceAndRoom() throws IOException {
        Path json = folder.resolve("short.json");
        Typed run = Typed.run("shortgame", "--player", PLAYER, "--json", json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        Schema.assertFits("shortgame.schema.json", json);
        Set<String> shots = new HashSet<>();
        double near = 0;
        double far = 0;
        for (JsonNode spot : new ObjectMapper().readTree(json.toFile()).get("spots")) {
            for (JsonNode way : spot.get("ways")) {
                String shot = way.get("shot").asText();
                shots.add(shot);
                boolean sand = spot.get("lie").asText().equals("bunker");
                boolean touch = Set.of("fringe putt", "chip", "pitch", "lob").contains(shot);
                assertThat(touch && sand).as("%s from sand", shot).isFalse();
                assertThat(shot.equals("bunker shot") && !sand).as(shot).isFalse();
                assertThat(shot.equals("fringe putt")
                                && !spot.get("lie").asText().equals("fairway"))
                        .as("a putt is played from short grass alone")
                        .isFalse();
                assertThat(way.get("insideThreeFeet").asDouble())
                        .isLessThanOrEqualTo(way.get("insideSixFeet").asDouble());
            }
            if (spot.get("lie").asText().equals("fairway")
                    && spot.get("roomYards").asDouble() > 13) {
                double best = spot.get("ways").get(0).get("upAndDown").asDouble();
                near = near == 0 ? best : near;
                far = best;
            }
        }
        assertThat(shots).contains("fringe putt", "chip", "pitch", "lob", "bunker shot");
        assertThat(near).as("up and down from near beside from far").isGreaterThan(far);
    }
}
