package dev.lapwing.use.application;

import java.time.OffsetDateTime;

/**
 * A stay in storage or in the workshop as it is sent.
 *
 * @param kind storage or workshop
 * @param from when it begins; may lie ahead
 * @param until when it ends, or null until further notice
 * @param place where the unit stands in storage: inside, outside, under trees; null for where it stands between rentals
 * @param note for people, or null
 */
public record StayEntry(String kind, OffsetDateTime from, OffsetDateTime until, String place, String note) {}
