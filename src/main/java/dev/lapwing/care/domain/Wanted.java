package dev.lapwing.care.domain;

import java.time.LocalDate;

/**
 * Scheduled work a unit should have open.
 *
 * @param why the reason in one line, with the rule
 */
record Wanted(TaskKind kind, TaskOrigin origin, DueWindow window, String why, RuleRef rule) {
    static Wanted of(
            TaskKind kind,
            TaskOrigin origin,
            LocalDate due,
            int opensBefore,
            int lateAfter,
            String cause,
            RuleRef rule) {
        var window = new DueWindow(due.minusDays(opensBefore), due, due.plusDays(lateAfter));
        return new Wanted(kind, origin, window, kind.label() + ": " + cause + ", rule " + rule, rule);
    }

    LocalDate due() {
        return window.due();
    }

    boolean isMetBy(OpenTask task) {
        return task.kind() == kind && task.origin() == origin && task.window().equals(window);
    }
}
