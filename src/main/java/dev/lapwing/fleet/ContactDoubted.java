package dev.lapwing.fleet;

import java.time.Instant;
import java.util.UUID;

/**
 * A report leaves it open whether a unit's roof was struck, and the desk was asked. Told inside the transaction.
 *
 * @param questionId the question that is open
 * @param unitId the unit
 * @param at when it was asked
 * @param words what was said, for people
 * @param by who filed the report
 */
public record ContactDoubted(UUID questionId, UUID unitId, Instant at, String words, String by) {}
