package loopwright.adapter.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import loopwright.action.BenchStore;
import loopwright.action.UserFault;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EmbeddedStoreIT extends StoreContract {
    @TempDir
    private static Path folder;

    private static BenchStore store;

    @BeforeAll
    static void open() {
        store = Database.open(folder, Optional.empty());
    }

    @AfterAll
    static void close() {
        store.close();
    }

    @Override
    BenchStore store() {
        return store;
    }

    @Test
    void openedAgainItHoldsTheSame() {
        String id = store.courses().add("Heath", "text", "").id();
        try (BenchStore again = Database.open(folder, Optional.empty())) {
            assertThat(again.courses().get(id).text()).isEqualTo("text");
        }
    }

    @Test
    void refusesAFileThatIsNoStore(@TempDir Path other) throws Exception {
        Files.writeString(
                other.resolve("bench.db"), "this is not a database, and long enough to be looked at".repeat(99));
        assertThatThrownBy(() -> Database.open(other, Optional.empty()))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("bench.db")
                .hasMessageContaining("--data");
    }

    @Test
    void refusesAnAddressThatIsNoPostgres() {
        assertThatThrownBy(() -> Database.open(folder, Optional.of("mysql://x?password=secret")))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("jdbc:postgresql:")
                .hasMessageNotContaining("secret");
    }
}
