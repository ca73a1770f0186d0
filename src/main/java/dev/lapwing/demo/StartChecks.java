package dev.lapwing.demo;

import io.quarkus.runtime.LaunchMode;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Refuses to start with settings that are for trying out only, where they could do harm. */
@ApplicationScoped
class StartChecks {
    @Inject
    @ConfigProperty(name = "lapwing.demo")
    boolean demo;

    @ConfigProperty(name = "quarkus.http.host")
    String host;

    @ConfigProperty(name = "lapwing.clock")
    Optional<String> clock;

    void starting(@Observes @Priority(1) StartupEvent event) {
        refusal(demo, host, clock.isPresent(), LaunchMode.current() == LaunchMode.TEST)
                .ifPresent(why -> {
                    throw new IllegalStateException(why);
                });
    }

    /** Returns why the service must not start like this, or empty. */
    static Optional<String> refusal(boolean demo, String host, boolean clockSet, boolean test) {
        if (demo && !isLoopback(host)) {
            return Optional.of("lapwing.demo=true makes sign-ins with a known password, so quarkus.http.host must be a"
                    + " loopback address such as 127.0.0.1, and it is " + host);
        }
        if (clockSet && !demo && !test) {
            return Optional.of("lapwing.clock sets a false time and works with lapwing.demo=true only;"
                    + " remove it, or start the demo");
        }
        return Optional.empty();
    }

    private static boolean isLoopback(String host) {
        try {
            return InetAddress.getByName(host).isLoopbackAddress();
        } catch (UnknownHostException unknown) {
            return false;
        }
    }
}
