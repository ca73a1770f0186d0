package dev.lapwing.fleet;

import java.time.Instant;
import java.util.UUID;

/**
 * A unit's roof was struck: an overhead contact taken as real. Told inside the transaction that records it.
 *
 * @param strikeId the strike
 * @param unitId the unit
 * @param seenAt when it became known
 * @param words what was said of it, for people
 * @param by who recorded it
 */
public record RoofStruck(UUID strikeId, UUID unitId, Instant seenAt, String words, String by) {}
