package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The documented JSON Schemas of {@code docs/schema}. */
final class Schema {
    private static final Path FOLDER = Path.of("..", "docs", "schema");

    private Schema() {}

    /** Fails with the validator's findings unless the file holds what the schema says. */
    static void assertFits(String schema, Path json) throws IOException {
        var rules = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(FOLDER.resolve(schema)), InputFormat.JSON);
        assertThat(rules.validate(Files.readString(json), InputFormat.JSON)).isEmpty();
    }
}
