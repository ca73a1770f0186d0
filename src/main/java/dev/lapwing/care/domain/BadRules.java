package dev.lapwing.care.domain;

import java.util.List;

/** Rules that cannot be adopted; names every problem, each with the rule it is in. */
public final class BadRules extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final List<String> problems;

    BadRules(List<String> problems) {
        super("care rules cannot be used: " + String.join("; ", problems));
        this.problems = List.copyOf(problems);
    }

    public List<String> problems() {
        return problems;
    }
}
