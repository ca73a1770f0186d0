package dev.lapwing.jobs.domain.sheet;

import java.util.Optional;

/**
 * What the tech says of the roof and the air before going up.
 *
 * @param wet whether the roof is wet or icy
 * @param windy whether the wind makes ladder or roof unsafe
 */
public record Weather(boolean wet, boolean windy) {
    /** Returns why nobody goes up now, or empty. */
    public Optional<String> stop() {
        if (wet && windy) {
            return Optional.of("The roof is wet and it is windy: stop.");
        }
        if (wet) {
            return Optional.of("The roof is wet: stop.");
        }
        return windy ? Optional.of("It is windy: stop.") : Optional.empty();
    }
}
