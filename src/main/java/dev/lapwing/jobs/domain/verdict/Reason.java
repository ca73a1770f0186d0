package dev.lapwing.jobs.domain.verdict;

import dev.lapwing.jobs.domain.finding.Finding;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A rule that applied and the findings it applied to.
 *
 * @param rule id of the rule
 * @param verdict what this rule alone leads to
 * @param hold whether this rule alone holds the unit
 * @param because the rule in one sentence
 */
public record Reason(String rule, Verdict verdict, boolean hold, List<Finding> findings, String because) {
    public Reason {
        findings = List.copyOf(findings);
    }

    /** Returns the reason in one line, naming the findings. */
    public String inWords() {
        if (findings.isEmpty()) {
            return because + " (rule " + rule + ")";
        }
        String found = findings.stream().map(Finding::inWords).collect(Collectors.joining("; "));
        return found + ": " + because + " (rule " + rule + ")";
    }
}
