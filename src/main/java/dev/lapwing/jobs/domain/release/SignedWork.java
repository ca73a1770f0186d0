package dev.lapwing.jobs.domain.release;

import dev.lapwing.jobs.domain.verdict.Work;
import java.time.Instant;

/**
 * Follow-up work that was done and signed.
 *
 * @param by id of the person who did it
 */
public record SignedWork(Work work, String by, Instant signedAt) {}
