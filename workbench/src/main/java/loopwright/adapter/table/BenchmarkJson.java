package loopwright.adapter.table;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Optional;
import loopwright.action.BenchmarkFile;
import loopwright.scoring.BenchmarkTable;

/** Benchmarks as JSON, a disposable file: the keys are the names of the record's components. */
public final class BenchmarkJson implements BenchmarkFile {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @Override
    public String text(BenchmarkTable table) {
        try {
            return MAPPER.writeValueAsString(table);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a benchmark that is not JSON", e);
        }
    }

    @Override
    public Optional<BenchmarkTable> read(String text) {
        try {
            return Optional.of(MAPPER.readValue(text, BenchmarkTable.class));
        } catch (JsonProcessingException e) {
            return Optional.empty(); // made again
        }
    }
}
