package dev.lapwing.care;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/** Knows when the next rain is likely at a depot. */
public interface RainOutlook {
    /**
     * What is known.
     *
     * @param rainAt when rain is likely to begin, never before the instant asked for; null when none is likely
     * @param until how far that reaches
     */
    record Outlook(Instant rainAt, Instant until) {}

    /** Returns the outlook of every depot that has one at an instant, by its code. */
    Map<String, Outlook> all(Instant now);

    /** Returns the outlook of a depot, or empty when there is no forecast for it. */
    default Optional<Outlook> at(String depotCode, Instant now) {
        return Optional.ofNullable(all(now).get(depotCode));
    }
}
