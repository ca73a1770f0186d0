package dev.lapwing.fleet;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A unit was added or changed. Told inside the transaction.
 *
 * @param unitId the unit
 * @param pattern use pattern that was asked for, as sent, or null
 * @param patternReason why, or null
 * @param patternUntil last day the pattern is to count, or null for no end
 * @param at when
 * @param by who
 */
public record UnitSaved(
        UUID unitId, String pattern, String patternReason, LocalDate patternUntil, Instant at, String by) {
    /** Tells of a change that leaves the use pattern as it was set. */
    public static UnitSaved withoutPattern(UUID unitId, Instant at, String by) {
        return new UnitSaved(unitId, null, null, null, at, by);
    }
}
