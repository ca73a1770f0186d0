package dev.lapwing.people;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/** Tells the operator of a service without people where to make the first coordinator. */
@ApplicationScoped
class FirstStart {
    private static final Logger LOG = Logger.getLogger(FirstStart.class);
    private static final int LATE = 9000;

    @ConfigProperty(name = "lapwing.demo", defaultValue = "false")
    boolean demo;

    @ConfigProperty(name = "lapwing.public-url", defaultValue = "http://localhost:8080")
    String publicUrl;

    @Inject
    SettingUp settingUp;

    void announce(@Observes @Priority(LATE) StartupEvent started) {
        if (!demo && settingUp.needed()) {
            LOG.infof(
                    "Nobody can sign in yet. Make the first coordinator within 24 hours at %s/set-up/%s",
                    publicUrl, settingUp.newToken());
        }
    }
}
