package dev.lapwing.platform;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Makes the one clock of the service. It ticks in milliseconds, so that what is answered is what is stored. */
@Singleton
class ClockProducer {
    private static final Duration TICK = Duration.ofMillis(1);

    @Produces
    @Singleton
    Clock clock(@ConfigProperty(name = "lapwing.clock") Optional<Instant> start) {
        Clock real = Clock.tick(Clock.systemUTC(), TICK);
        return start.map(from -> Clock.offset(real, Duration.between(real.instant(), from)))
                .orElse(real);
    }
}
