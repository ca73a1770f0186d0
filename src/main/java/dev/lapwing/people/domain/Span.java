package dev.lapwing.people.domain;

import java.time.Instant;

/** A span of time; the end is not part of it. */
public record Span(Instant from, Instant until) {

    boolean covers(Instant at) {
        return !at.isBefore(from) && at.isBefore(until);
    }
}
