package loopwright.adapter.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.pool.HikariPool;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import javax.sql.DataSource;
import loopwright.action.BenchStore;
import loopwright.action.UserFault;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Opens the store: one file in the data folder, or a PostgreSQL database; brings its tables up to date first. */
public final class Database {
    private static final String FILE = "bench.db";
    private static final int CONNECTIONS = 8;
    private static final long PATIENCE_MILLIS = 30_000;

    private Database() {}

    /**
     * Opens or makes the store.
     *
     * @param folder the data folder; disposable files go there even if the store is a server's
     * @param server JDBC URL of a PostgreSQL database; empty: the file in the folder
     */
    public static BenchStore open(Path folder, Optional<String> server) {
        make(folder);
        HikariConfig config = server.map(Database::postgres).orElseGet(() -> sqlite(folder.resolve(FILE)));
        config.setMaximumPoolSize(CONNECTIONS);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(PATIENCE_MILLIS);
        String where =
                server.map(Database::withoutSecrets).orElse(folder.resolve(FILE).toString());
        HikariDataSource source = connect(config, where);
        try {
            migrate(source, folder, where);
        } catch (RuntimeException e) {
            source.close();
            throw e;
        }
        return new SqlStore(source, where, folder);
    }

    private static void make(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UserFault(
                    "The data folder " + folder + " cannot be made (" + e.getMessage()
                            + "); name another with --data or LOOPWRIGHT_DATA.",
                    e);
        }
    }

    /**
     * Write-ahead log with a full sync at every commit: what was acknowledged survives a killed process and a power cut.
     * A transaction asks for the right to write when it begins, so that writers wait for each other and none fails.
     */
    private static HikariConfig sqlite(Path file) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl("jdbc:sqlite:" + file);
        config.addDataSourceProperty("journal_mode", "WAL");
        config.addDataSourceProperty("synchronous", "FULL");
        config.addDataSourceProperty("foreign_keys", "true");
        config.addDataSourceProperty("busy_timeout", Long.toString(PATIENCE_MILLIS));
        config.addDataSourceProperty("transaction_mode", "IMMEDIATE");
        return config;
    }

    private static HikariConfig postgres(String url) {
        if (!url.startsWith("jdbc:postgresql:")) {
            throw new UserFault("\"" + withoutSecrets(url) + "\" is no address of a PostgreSQL database; one looks like"
                    + " jdbc:postgresql://localhost/bench?user=coach.");
        }
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(url);
        return config;
    }

    /** The address without what follows the question mark: a password may stand there. */
    private static String withoutSecrets(String url) {
        int question = url.indexOf('?');
        return question < 0 ? url : url.substring(0, question);
    }

    private static HikariDataSource connect(HikariConfig config, String where) {
        try {
            return new HikariDataSource(config);
        } catch (HikariPool.PoolInitializationException e) {
            throw cannotOpen(where, e);
        }
    }

    private static UserFault cannotOpen(String where, RuntimeException e) {
        Throwable cause = e;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return new UserFault(
                "The store " + where + " cannot be opened ("
                        + String.valueOf(cause.getMessage()).lines().findFirst().orElse("no reason given")
                        + "); choose another with --data or --database, or restore a backup into an empty folder.",
                e);
    }

    /** One process at a time: of two that start at once, the second finds the tables made. */
    private static void migrate(DataSource source, Path folder, String where) {
        try (FileChannel channel = FileChannel.open(
                        folder.resolve(".migrating"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            if (lock.isValid()) {
                Flyway.configure(Database.class.getClassLoader())
                        .dataSource(source)
                        .locations("classpath:loopwright/adapter/store")
                        .load()
                        .migrate();
            }
        } catch (FlywayException e) {
            throw cannotOpen(where, e);
        } catch (IOException e) {
            throw new UserFault(
                    "The data folder " + folder + " cannot be written (" + e.getMessage()
                            + "); name another with --data or LOOPWRIGHT_DATA.",
                    e);
        }
    }
}
