package dev.lapwing.jobs.domain.verdict;

import java.time.Instant;
import java.util.List;
import java.util.Set;

/**
 * Work that follows from a verdict.
 *
 * @param urgency how soon
 * @param due by when at the latest
 * @param waitsFor work of the same sheet that must be done first, empty when it can begin
 * @param rules ids of the rules that led to it
 */
public record FollowUp(Work work, Urgency urgency, Instant due, Set<Work> waitsFor, List<String> rules) {
    public FollowUp {
        waitsFor = Set.copyOf(waitsFor);
        rules = List.copyOf(rules);
    }
}
