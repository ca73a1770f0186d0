package dev.lapwing.use.application;

import java.time.OffsetDateTime;

/**
 * A rental as it is sent.
 *
 * @param out when the unit goes out; may lie ahead
 * @param back when it comes back, or null while that is not known
 * @param reference the rental's own number in another system, or null
 */
public record RentalEntry(OffsetDateTime out, OffsetDateTime back, String reference) {}
