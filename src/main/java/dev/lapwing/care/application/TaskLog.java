package dev.lapwing.care.application;

import dev.lapwing.audit.AuditTrail;
import dev.lapwing.audit.Audited;
import dev.lapwing.care.TaskMoved;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.TaskStep;
import dev.lapwing.platform.Ids;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.time.Instant;

/** Writes down each step in the life of a task, on the task and in the audit, and tells of it. */
@ApplicationScoped
class TaskLog {
    @Inject
    Ids ids;

    @Inject
    Event<TaskMoved> moved;

    @Inject
    AuditTrail audit;

    void write(CareTask task, String who, String words, Instant at) {
        TaskStep last = TaskStep.lastOf(task.id);
        var step = new TaskStep();
        step.id = ids.next();
        step.taskId = task.id;
        step.position = last == null ? 0 : last.position + 1;
        step.at = at;
        step.who = who;
        step.state = task.state;
        step.words = words;
        step.persist();
        String was = last == null ? null : last.state.word();
        audit.write(
                Audited.of(task.unit.id, whatOf(task), "care", task.id, was, task.state.word() + ": " + words),
                who,
                at);
        moved.fire(new TaskMoved(task.id, task.state, step.position == 0));
    }

    private static String whatOf(CareTask task) {
        return "task: " + task.kind.word();
    }
}
