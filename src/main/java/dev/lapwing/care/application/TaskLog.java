package dev.lapwing.care.application;

import dev.lapwing.care.TaskMoved;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.TaskStep;
import dev.lapwing.platform.Ids;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.time.Instant;

/** Writes down each step in the life of a task, and tells of it. */
@ApplicationScoped
class TaskLog {
    @Inject
    Ids ids;

    @Inject
    Event<TaskMoved> moved;

    void write(CareTask task, String who, String words, Instant at) {
        var step = new TaskStep();
        step.id = ids.next();
        step.taskId = task.id;
        step.position = (int) TaskStep.count("taskId", task.id);
        step.at = at;
        step.who = who;
        step.state = task.state;
        step.words = words;
        step.persist();
        moved.fire(new TaskMoved(task.id, task.state, step.position == 0));
    }
}
