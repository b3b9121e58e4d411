package loopwright.adapter.table;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Path;
import loopwright.action.ResultFile;
import loopwright.action.WholeFile;

/** Writes result records as indented JSON; keys without a value are left out. */
public final class JsonResultFile implements ResultFile {
    private final ObjectMapper mapper = JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .defaultPropertyInclusion(JsonInclude.Value.ALL_NON_NULL)
            .build();

    @Override
    public void write(Path file, Object result) {
        try {
            WholeFile.write(file, mapper.writeValueAsString(result) + "\n");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a result record that is not JSON: " + result.getClass(), e);
        }
    }
}
