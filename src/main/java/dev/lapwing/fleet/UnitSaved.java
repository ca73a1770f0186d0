package dev.lapwing.fleet;

import java.time.Instant;
import java.util.UUID;

/**
 * A unit was added or changed. Told inside the transaction.
 *
 * @param unitId the unit
 * @param pattern use pattern that was asked for, as sent, or null
 * @param patternReason why, or null
 * @param at when
 * @param by who
 */
public record UnitSaved(UUID unitId, String pattern, String patternReason, Instant at, String by) {}
