package dev.lapwing.jobs.application;

import dev.lapwing.jobs.domain.release.ReleaseRules;
import dev.lapwing.jobs.domain.verdict.RuleTable;
import io.quarkus.runtime.Startup;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.eclipse.microprofile.config.Config;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Reads the rules of verdicts and releases once, at start, and refuses to start with bad ones. */
@Singleton
class JobSettings {
    private static final String TIGHTENING = "lapwing.verdict.";

    @Produces
    @Singleton
    @Startup
    RuleTable verdicts(Config config) {
        Map<String, String> settings = new HashMap<>();
        for (String name : config.getPropertyNames()) {
            if (name.startsWith(TIGHTENING)) {
                settings.put(name.substring(TIGHTENING.length()), config.getValue(name, String.class));
            }
        }
        return RuleTable.tightened(settings);
    }

    @Produces
    @Singleton
    @Startup
    ReleaseRules releases(
            @ConfigProperty(name = "lapwing.release.roles", defaultValue = "coordinator,tech") Set<String> roles,
            @ConfigProperty(name = "lapwing.release.second-person-after-repair", defaultValue = "true")
                    boolean secondPerson) {
        return new ReleaseRules(roles, secondPerson);
    }
}
