package dev.lapwing.care;

import java.util.UUID;

/**
 * A signature ended the last hold of a unit: it may be rented again. Told inside the transaction.
 *
 * @param unitId the unit
 * @param holdId the hold that ended last
 */
public record UnitReleased(UUID unitId, UUID holdId) {}
