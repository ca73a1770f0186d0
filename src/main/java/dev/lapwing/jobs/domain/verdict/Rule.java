package dev.lapwing.jobs.domain.verdict;

import dev.lapwing.jobs.domain.finding.Finding;
import java.util.List;

/**
 * One rule of the table.
 *
 * @param id short name, used in settings and in the reasons of a verdict
 * @param finds what it looks for among all findings of a sheet
 * @param consequence what it leads to
 * @param because the rule in one sentence
 */
record Rule(String id, Finds finds, Consequence consequence, String because) {
    /** Picks the findings a rule applies to; more findings never make it pick fewer. */
    @FunctionalInterface
    interface Finds {
        List<Finding> among(List<Finding> findings, RuleSettings settings);
    }

    Rule with(Consequence tightened) {
        return new Rule(id, finds, tightened, because);
    }
}
