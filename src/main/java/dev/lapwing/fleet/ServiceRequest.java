package dev.lapwing.fleet;

import java.time.LocalDate;

/**
 * A unit leaves or comes back.
 *
 * @param state word of the state it is to have
 * @param on first day of it, or null for today at its depot
 * @param reason why
 */
record ServiceRequest(String state, LocalDate on, String reason) {}
