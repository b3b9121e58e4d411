package loopwright.adapter.table;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import loopwright.action.PlayerFiles;
import loopwright.action.UserFault;
import loopwright.action.WholeFile;
import loopwright.player.PlayerProfile;

/** Player files in JSON. */
public final class JsonPlayerFiles implements PlayerFiles {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @Override
    public PlayerProfile read(Path file) {
        return PlayerJson.read(new JsonField(file.toString(), "", parse(file)));
    }

    @Override
    public void write(PlayerProfile profile, Path target) {
        WholeFile.write(target, text(profile));
    }

    static String text(PlayerProfile profile) {
        return PlayerJson.write(profile).toPrettyString() + "\n";
    }

    private static JsonNode parse(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new UserFault(file + " does not exist or is not a file; make a player with \"loopwright fit\""
                    + " or \"loopwright player new\".");
        }
        try {
            JsonNode node = MAPPER.readTree(Files.readAllBytes(file));
            if (node == null || node.isMissingNode()) {
                throw new UserFault(file + " is empty; a player file written by \"loopwright fit\" is expected.");
            }
            return node;
        } catch (JsonProcessingException e) {
            var at = e.getLocation();
            throw new UserFault(
                    file + ", line " + at.getLineNr() + ", column " + at.getColumnNr()
                            + " is not JSON (" + e.getOriginalMessage() + "); a player file written by"
                            + " \"loopwright fit\" is expected.",
                    e);
        } catch (IOException e) {
            throw new UserFault(file + " cannot be read (" + e.getMessage() + ").", e);
        }
    }
}
