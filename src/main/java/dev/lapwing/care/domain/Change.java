package dev.lapwing.care.domain;

import java.time.Instant;

/** One thing the engine says about a unit's work. Only {@link Create} and {@link CallOff} change what is stored. */
public sealed interface Change {
    /**
     * A task to make.
     *
     * @param dueAt the instant it is due, for event work; null for work due on a day
     * @param event id of the event it answers, null if none
     * @param why the reason in one line, with the rule
     * @param rule rule and version that made it
     */
    record Create(
            TaskKind kind, TaskOrigin origin, DueWindow window, Instant dueAt, String event, String why, RuleRef rule)
            implements Change {}

    /** A task to call off; its due date and the reason stay on record. */
    record CallOff(String task, String reason) implements Change {}

    /** A task that stays as it is. */
    record Keep(String task, String why) implements Change {}

    /** A task a person has touched and the facts no longer bear out: left as it is, a person decides. */
    record Ask(String task, String question) implements Change {}
}
