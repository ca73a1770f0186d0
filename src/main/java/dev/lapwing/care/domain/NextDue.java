package dev.lapwing.care.domain;

/**
 * The next work of a unit.
 *
 * @param kind what is due
 * @param origin what brings it about
 * @param window when
 * @param why the reason in one line
 */
public record NextDue(TaskKind kind, TaskOrigin origin, DueWindow window, String why) {}
