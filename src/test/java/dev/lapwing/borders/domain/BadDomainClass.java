package dev.lapwing.borders.domain;

import jakarta.inject.Inject;
import java.time.Instant;

/** Breaks the rules of the core on purpose, to show that they can fail. */
public class BadDomainClass {
    @Inject
    String injected;

    Instant readsTheWallClock() {
        return Instant.now();
    }
}
