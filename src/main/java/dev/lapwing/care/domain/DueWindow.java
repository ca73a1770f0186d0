package dev.lapwing.care.domain;

import java.time.LocalDate;

/**
 * When a task is to be done, in local dates of the unit's depot.
 *
 * @param opens first day on which doing it counts as on time
 * @param due the day it is due
 * @param late last day before it is called late
 */
public record DueWindow(LocalDate opens, LocalDate due, LocalDate late) {
    public DueWindow {
        if (due.isBefore(opens) || late.isBefore(due)) {
            throw new IllegalArgumentException(
                    "window out of order: opens " + opens + ", due " + due + ", late " + late);
        }
    }
}
