package dev.lapwing.care.web;

import dev.lapwing.care.domain.Standing;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.UUID;

/**
 * One row of the due list.
 *
 * @param due an instant with offset for strike work, else a date of the depot
 * @param hold the open hold of the unit, or null
 * @param pickup when the unit is booked to go out next, or null
 * @param yard where the unit is and whether the work fits in before it goes
 * @param question what the rules ask of a task that a person has in hand, or null
 */
record DueItem(
        UUID task,
        String unit,
        String depot,
        TaskKind kind,
        LocalDate opens,
        String due,
        LocalDate late,
        TaskState state,
        Standing standing,
        String assignee,
        HoldAnswer hold,
        String why,
        OffsetDateTime pickup,
        String yard,
        String question) {

    static DueItem of(CareTask task, Hold hold, YardNotes yard, Instant now) {
        Instant pickup = yard.pickup(task);
        return new DueItem(
                task.id,
                task.unit.number,
                task.depot.code,
                task.kind,
                task.opens,
                due(task),
                task.late,
                task.state,
                task.standingAt(now),
                task.assignee,
                hold == null ? null : HoldAnswer.of(hold),
                task.why,
                pickup == null ? null : pickup.atZone(task.depot.zoneId()).toOffsetDateTime(),
                yard.note(task),
                task.question);
    }

    /** Writes when a task is due: strike work at an instant, all other by a date. */
    static String due(CareTask task) {
        return task.kind == TaskKind.STRIKE_INSPECTION
                ? task.dueAt.atZone(task.depot.zoneId()).toOffsetDateTime().toString()
                : task.due.toString();
    }
}
