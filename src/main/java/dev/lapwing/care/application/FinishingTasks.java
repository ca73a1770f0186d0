package dev.lapwing.care.application;

import dev.lapwing.care.Signer;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.TaskStep;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** What filling in and signing a job sheet does to tasks. */
@ApplicationScoped
public class FinishingTasks {
    @Inject
    TaskLog log;

    /**
     * Returns a task whose sheet may be filled in now, kept from others until the transaction ends. Refuses one that is
     * not under way, and one that someone else has unless the coordinator asks.
     */
    @Transactional(Transactional.TxType.MANDATORY)
    public CareTask underWay(UUID id, Signer who) {
        CareTask task = own(id, who);
        if (task.state != TaskState.UNDER_WAY) {
            throw Refused.conflict(
                    "The task is " + task.state.word() + "; its sheet is filled in while it is under way");
        }
        return task;
    }

    /**
     * Returns a task whose work has begun, even if it is done by now: what was recorded on the roof may arrive late.
     * Refuses others, and one that someone else has unless the coordinator asks.
     */
    @Transactional
    public CareTask begun(UUID id, Signer who) {
        CareTask task = CareTask.require(id);
        MovingTasks.requireOwn(task, who.username(), who.coordinator());
        if (task.state != TaskState.UNDER_WAY && task.state != TaskState.DONE) {
            throw Refused.conflict("The task is " + task.state.word() + "; start it first");
        }
        return task;
    }

    /** Returns a task that is not ended, in whatever state, like {@link #underWay}. */
    @Transactional(Transactional.TxType.MANDATORY)
    public CareTask open(UUID id, Signer who) {
        CareTask task = own(id, who);
        if (!task.state.open()) {
            throw Refused.conflict("The task is " + task.state.word());
        }
        return task;
    }

    /** Turns a task into one of another kind. */
    @Transactional(Transactional.TxType.MANDATORY)
    public void turnInto(CareTask task, TaskKind kind, String by, String words, Instant at) {
        task.kind = kind;
        task.touched = true;
        log.write(task, by, words, at);
    }

    private static CareTask own(UUID id, Signer who) {
        CareTask task = CareTask.require(id);
        lock(task);
        MovingTasks.requireOwn(task, who.username(), who.coordinator());
        return task;
    }

    /** Takes the lock in plain SQL: the dialect's own clause for it is not understood by both engines. */
    private static void lock(CareTask task) {
        EntityManager database = CareTask.getEntityManager();
        database.createNativeQuery("select id from care_task where id = :id for update", UUID.class)
                .setParameter("id", task.id)
                .getSingleResult();
        database.refresh(task);
    }

    /** Ends a task as done. */
    @Transactional(Transactional.TxType.MANDATORY)
    public void finish(CareTask task, String by, String words, Instant at) {
        task.state = TaskState.DONE;
        task.touched = true;
        task.doneAt = at;
        task.doneOn = task.depot.dateAt(at);
        task.openKey = null;
        log.write(task, by, words, at);
    }

    /**
     * Returns the open strike inspections of the same unit that a full inspection also does: those of strikes reported
     * before it began, oldest first. One that somebody else has begun is left to them.
     */
    @Transactional(Transactional.TxType.MANDATORY)
    public List<CareTask> alsoDoneBy(CareTask inspection) {
        if (!inspection.kind.fullInspection()) {
            return List.of();
        }
        Instant began = TaskStep.firstIn(inspection.id, TaskState.UNDER_WAY).at;
        List<CareTask> open = CareTask.list(
                "unit = ?1 and id <> ?2 and kind = ?3 and state in ?4 and createdAt < ?5 order by createdAt, id",
                inspection.unit,
                inspection.id,
                TaskKind.STRIKE_INSPECTION,
                TaskState.OPEN,
                began);
        return open.stream()
                .filter(task -> task.state != TaskState.UNDER_WAY || task.assignee.equals(inspection.assignee))
                .toList();
    }
}
