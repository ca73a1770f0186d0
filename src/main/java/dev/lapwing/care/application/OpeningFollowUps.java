package dev.lapwing.care.application;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.Ids;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;

/** Plans the work that follows from what was found. */
@ApplicationScoped
public class OpeningFollowUps {
    @Inject
    TaskLog log;

    @Inject
    Ids ids;

    /**
     * Work that is wanted.
     *
     * @param key names it among all open work; at most 120 characters
     * @param why for people; at most 1,000 characters
     * @param due when it is due at the latest
     */
    public record Wanted(TaskKind kind, String key, String why, Instant due) {}

    /** Opens the work for a unit at its depot, to be done from today on. Nobody has it yet. */
    @Transactional(Transactional.TxType.MANDATORY)
    public CareTask open(Unit unit, Wanted wanted, String by, Instant at) {
        LocalDate due = unit.depot.dateAt(wanted.due());
        var task = new CareTask();
        task.id = ids.next();
        task.unit = unit;
        task.depot = unit.depot;
        task.kind = wanted.kind();
        task.origin = TaskOrigin.FOLLOW_UP;
        task.why = wanted.why();
        task.opens = unit.depot.dateAt(at);
        task.due = due;
        task.late = due;
        task.dueAt = due.atStartOfDay(unit.depot.zoneId()).toInstant();
        task.openKey = wanted.key();
        task.state = TaskState.PLANNED;
        task.createdAt = at;
        task.createdBy = by;
        task.persist();
        log.write(task, by, "Follow-up opened", at);
        return task;
    }
}
