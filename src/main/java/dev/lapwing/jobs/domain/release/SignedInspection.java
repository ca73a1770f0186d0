package dev.lapwing.jobs.domain.release;

import dev.lapwing.jobs.domain.verdict.Outcome;
import java.time.Instant;
import java.util.Set;

/**
 * A signed job sheet.
 *
 * @param covers ids of the causes it looked into
 * @param by id of the person who signed
 * @param outcome what its findings led to, after the coordinator's decision if there was one
 */
public record SignedInspection(Set<String> covers, String by, Instant signedAt, Outcome outcome) {
    public SignedInspection {
        covers = Set.copyOf(covers);
    }
}
