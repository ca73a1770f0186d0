package dev.lapwing.care.domain;

import java.util.List;
import java.util.stream.Collectors;

/** Rules that cannot be adopted; names every problem, each with the rule it is in. */
public final class BadRules extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient List<RuleProblem> found;

    BadRules(List<RuleProblem> found) {
        super("care rules cannot be used: "
                + found.stream().map(RuleProblem::text).collect(Collectors.joining("; ")));
        this.found = List.copyOf(found);
    }

    /** Returns each problem with its place. */
    public List<RuleProblem> found() {
        return found;
    }

    /** Returns each problem in one line. */
    public List<String> problems() {
        return found.stream().map(RuleProblem::text).toList();
    }
}
