package dev.lapwing.jobs.domain.sealant;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What is recorded of a roof's membrane system. Any part may be null or blank.
 *
 * @param system name of the system
 * @param confirmedBy who confirmed it
 * @param confirmedOn when
 */
public record Membrane(String system, String confirmedBy, LocalDate confirmedOn) {
    public static final Membrane UNKNOWN = new Membrane(null, null, null);

    /** Returns whether the system is named and was confirmed by someone, not after today. */
    public boolean isConfirmed(LocalDate today) {
        return whatIsMissing(today).isEmpty();
    }

    /** Returns what keeps the system from counting as confirmed, in a few words. */
    public Optional<String> whatIsMissing(LocalDate today) {
        if (isBlank(system)) {
            return Optional.of("the membrane system is not recorded");
        }
        if (isBlank(confirmedBy)) {
            return Optional.of("nobody has confirmed the membrane system");
        }
        if (confirmedOn == null) {
            return Optional.of("the day of the confirmation is not recorded");
        }
        return confirmedOn.isAfter(today)
                ? Optional.of("the day of the confirmation, " + confirmedOn + ", is still to come")
                : Optional.empty();
    }

    private static boolean isBlank(String text) {
        return text == null || text.isBlank();
    }
}
