package dev.lapwing.platform;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.List;

/** Runs a test's application on a real PostgreSQL server that the test brings along. */
public class OnPostgres implements QuarkusTestProfile {
    @Override
    public List<TestResourceEntry> testResources() {
        return List.of(new TestResourceEntry(PostgresServer.class));
    }

    @Override
    public boolean disableGlobalTestResources() {
        return true;
    }
}
