package dev.lapwing.people;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Counts wrong tokens by the address they come from; too many within a minute, and none is looked at any more. */
@ApplicationScoped
class Guesses {
    static final Duration WINDOW = Duration.ofMinutes(1);
    private static final int REMEMBERED = 10_000;

    @ConfigProperty(name = "lapwing.job-link.wrong-per-minute", defaultValue = "20")
    int most;

    /** An entry ends a minute after its first guess: counting on does not write it anew. */
    private final Cache<String, AtomicInteger> wrong = Caffeine.newBuilder()
            .maximumSize(REMEMBERED)
            .expireAfterWrite(WINDOW)
            .build();

    boolean tooMany(String address) {
        AtomicInteger count = wrong.getIfPresent(address);
        return count != null && count.get() >= most;
    }

    void wrong(String address) {
        wrong.get(address, first -> new AtomicInteger()).incrementAndGet();
    }
}
