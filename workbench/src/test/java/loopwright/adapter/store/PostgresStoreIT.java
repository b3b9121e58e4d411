package loopwright.adapter.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import loopwright.action.BenchStore;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

class PostgresStoreIT extends StoreContract {
    @TempDir
    private static Path folder;

    private static EmbeddedPostgres server;
    private static BenchStore store;

    @BeforeAll
    static void start() throws IOException {
        server = EmbeddedPostgres.start();
        store = Database.open(folder, Optional.of(server.getJdbcUrl("postgres", "postgres")));
    }

    @AfterAll
    static void stop() throws IOException {
        store.close();
        server.close();
    }

    @Override
    BenchStore store() {
        return store;
    }
}
