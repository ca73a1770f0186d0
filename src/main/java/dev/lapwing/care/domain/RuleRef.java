package dev.lapwing.care.domain;

import java.util.Objects;

/**
 * Names a rule as it was when it made a task.
 *
 * @param id word of the rule, such as {@code full-time}
 * @param version counts up whenever the rule is changed, from 1
 */
public record RuleRef(String id, int version) {
    public RuleRef {
        Objects.requireNonNull(id, "id");
    }

    @Override
    public String toString() {
        return id + " v" + version;
    }
}
