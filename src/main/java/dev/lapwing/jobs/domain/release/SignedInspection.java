package dev.lapwing.jobs.domain.release;

import dev.lapwing.jobs.domain.verdict.Outcome;
import dev.lapwing.jobs.domain.verdict.Verdict;
import dev.lapwing.jobs.domain.verdict.Work;
import java.time.Instant;
import java.util.Set;

/**
 * A signed job sheet.
 *
 * @param covers ids of the causes it looked into
 * @param by id of the person who signed
 * @param verdict what its findings led to, after the coordinator's decision if there was one
 * @param holdingWork the work that must be done and signed before a hold can end
 */
public record SignedInspection(
        Set<String> covers, String by, Instant signedAt, Verdict verdict, Set<Work> holdingWork) {
    public SignedInspection {
        covers = Set.copyOf(covers);
        holdingWork = Set.copyOf(holdingWork);
    }

    /** A sheet with the outcome of its findings. */
    public SignedInspection(Set<String> covers, String by, Instant signedAt, Outcome outcome) {
        this(covers, by, signedAt, outcome.verdict(), outcome.holdingWork());
    }
}
