package dev.lapwing.demo;

import dev.lapwing.care.domain.DueWindow;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.TaskStep;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** A task of the demo, taken through its states one step at a time. */
final class DemoTask {
    static final String COORDINATOR = "coordinator";
    private static final Duration BETWEEN_STEPS = Duration.ofMinutes(45);

    private final CareTask task;
    private final List<TaskStep> steps = new ArrayList<>();
    private Instant at;

    /**
     * Plans a task.
     *
     * @param name what tells it from the other tasks of its unit
     */
    DemoTask(DemoUnit of, String name, TaskKind kind, TaskOrigin origin, DueWindow window, Instant made, String why) {
        task = new CareTask();
        task.id = DemoIds.of(of.unit().number, "task", name);
        task.unit = of.unit();
        task.depot = of.unit().depot;
        task.kind = kind;
        task.origin = origin;
        task.why = why;
        task.opens = window.opens();
        task.due = window.due();
        task.late = window.late();
        task.dueAt = window.due().atStartOfDay(of.zone()).toInstant();
        task.createdAt = made;
        task.createdBy = "sweep";
        at = made;
        step(TaskState.PLANNED, "sweep", "Planned: " + why);
    }

    /**
     * Takes up a task that the sweep has just made, as if it had made it earlier.
     *
     * @param made when
     */
    DemoTask(CareTask swept, Instant made) {
        task = swept;
        task.createdAt = made;
        steps.addAll(TaskStep.of(task.id));
        steps.forEach(step -> step.at = made);
        at = made.plus(BETWEEN_STEPS);
    }

    /** Says which rule made it. */
    DemoTask byRule(String id) {
        task.ruleId = id;
        task.ruleVersion = 1;
        return this;
    }

    /** Makes it the answer to a strike, due at that instant. */
    DemoTask answering(UUID strikeId, Instant due) {
        task.strikeId = strikeId;
        task.dueAt = due;
        task.openKey = "strike " + strikeId;
        return this;
    }

    /** Takes the task to a state the usual way, one step after the other. */
    DemoTask to(TaskState state, String tech) {
        if (state.compareTo(TaskState.ASSIGNED) >= 0) {
            task.assignee = tech;
            task.touched = true;
            step(TaskState.ASSIGNED, COORDINATOR, "Given to " + tech);
        }
        if (state.compareTo(TaskState.ACCEPTED) >= 0) {
            step(TaskState.ACCEPTED, tech, "Accepted");
        }
        if (state.compareTo(TaskState.UNDER_WAY) >= 0) {
            step(TaskState.UNDER_WAY, tech, "Started");
        }
        return this;
    }

    /** Has it done and signed off at a moment. */
    CareTask done(String tech, Instant signed, String words) {
        to(TaskState.UNDER_WAY, tech);
        at = signed;
        step(TaskState.DONE, tech, words);
        task.doneAt = signed;
        task.doneOn = task.depot.dateAt(signed);
        task.openKey = null;
        return store();
    }

    CareTask calledOff(String why) {
        task.touched = true;
        step(TaskState.CALLED_OFF, COORDINATOR, "Called off: " + why);
        task.openKey = null;
        return store();
    }

    CareTask store() {
        task.persistAndFlush();
        TaskStep.persist(steps);
        return task;
    }

    private void step(TaskState state, String who, String words) {
        task.state = state;
        var step = new TaskStep();
        step.id = DemoIds.of(task.id, steps.size());
        step.taskId = task.id;
        step.position = steps.size();
        step.at = at;
        step.who = who;
        step.state = state;
        step.words = words;
        steps.add(step);
        at = at.plus(BETWEEN_STEPS);
    }
}
