package dev.lapwing.alerts.hooks;

import dev.lapwing.platform.OnPostgres;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.util.HashMap;
import java.util.Map;

/** The same claims, on the other database engine. */
@QuarkusTest
@TestProfile(WebhooksOnPostgresTest.OwnNetworkOnPostgres.class)
class WebhooksOnPostgresTest extends WebhooksTest {
    /** The settings of the other test, but for the database. */
    public static class OwnNetworkOnPostgres extends OnPostgres {
        @Override
        public Map<String, String> getConfigOverrides() {
            Map<String, String> settings = new HashMap<>(new OwnNetwork().getConfigOverrides());
            settings.remove("quarkus.datasource.jdbc.url");
            return settings;
        }
    }
}
