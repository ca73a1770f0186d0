package dev.lapwing.jobs.domain.release;

import java.time.Instant;

/**
 * The desk's answer that nothing touched the roof.
 *
 * @param by id of the person who answered
 * @param why in their words
 */
public record NoContact(String reportId, String by, String why, Instant at) {}
