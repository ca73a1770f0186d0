package dev.lapwing.demo;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** Starts the service with the invented fleet in a database of its own. */
public class DemoProfile implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of("lapwing.demo", "true", "quarkus.datasource.jdbc.url", "jdbc:h2:mem:demo");
    }
}
