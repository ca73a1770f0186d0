package dev.lapwing.care.application;

import dev.lapwing.care.Signer;
import dev.lapwing.care.TaskAssigned;
import dev.lapwing.care.TaskCalledOff;
import dev.lapwing.care.Tech;
import dev.lapwing.care.TechRoster;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskMove;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.UUID;

/** What people do to tasks: assign, accept, start, call off. */
@ApplicationScoped
public class MovingTasks {
    private static final int LONGEST_WHY = 1000;

    @Inject
    TechRoster roster;

    @Inject
    TaskLog log;

    @Inject
    Event<TaskAssigned> assigned;

    @Inject
    Event<TaskCalledOff> calledOff;

    @Inject
    Clock clock;

    /** Gives a task to a tech of its depot. */
    @Transactional
    public CareTask assign(UUID id, String username, String by) {
        CareTask task = CareTask.require(id);
        Tech tech = roster.techsOf(task.depot.code).stream()
                .filter(someone -> someone.username().equals(username))
                .findFirst()
                .orElseThrow(() -> Refused.invalid("tech", "is not the sign-in name of a tech at " + task.depot.name));
        String before = task.assignee;
        move(task, TaskMove.ASSIGN, by, "Given to " + tech.fullName(), () -> task.assignee = username);
        assigned.fire(new TaskAssigned(task.id, username, before, by));
        return task;
    }

    /**
     * Takes a task on. A task that nobody has becomes the caller's; so does a strike inspection that nobody has accepted,
     * whoever was asked first, when the caller is a tech of the depot.
     */
    @Transactional
    public CareTask accept(UUID id, String by, boolean coordinator) {
        CareTask task = CareTask.require(id);
        if (free(task) && task.assignee != null && techOf(task, by)) {
            return takeOver(task, by);
        }
        requireOwn(task, by, coordinator);
        if (coordinator && task.assignee == null) {
            throw Refused.conflict("Nobody has the task yet; assign it first");
        }
        move(task, TaskMove.ACCEPT, by, "Accepted", () -> task.assignee = task.assignee == null ? by : task.assignee);
        return task;
    }

    /** Notes that the work has begun. */
    @Transactional
    public CareTask start(UUID id, String by, boolean coordinator) {
        CareTask task = CareTask.require(id);
        requireOwn(task, by, coordinator);
        move(task, TaskMove.START, by, "Started", () -> {});
        return task;
    }

    /** Takes a task on, if that is still to be done, and begins it; one that is under way stays as it is. */
    @Transactional
    public CareTask begin(UUID id, Signer who) {
        CareTask task = CareTask.require(id);
        requireOwn(task, who.username(), who.coordinator());
        if (task.state == TaskState.UNDER_WAY) {
            return task;
        }
        if (TaskMove.ACCEPT.refusal(task.state).isEmpty()) {
            accept(id, who.username(), who.coordinator());
        }
        move(
                task,
                TaskMove.START,
                who.username(),
                "Started" + (who.byLink() ? ", by the link in the mail" : ""),
                () -> {});
        return task;
    }

    /** Ends a task that need not be done. Strike work cannot be called off: its hold would never end. */
    @Transactional
    public CareTask callOff(UUID id, String why, String by) {
        var errors = new FieldErrors();
        if (errors.present(why, "why")) {
            errors.atMost(why, LONGEST_WHY, "why");
        }
        errors.refuseIfAny();
        CareTask task = CareTask.require(id);
        if (task.strikeId != null) {
            throw Refused.conflict("A strike inspection ends by being done; it cannot be called off");
        }
        move(task, TaskMove.CALL_OFF, by, "Called off: " + why.strip(), () -> task.openKey = null);
        calledOff.fire(new TaskCalledOff(task.id, task.assignee, why.strip(), by));
        return task;
    }

    /** Returns whether any tech of the depot may take a task on, whoever was asked first. */
    public static boolean free(CareTask task) {
        return task.assignee == null || task.kind == TaskKind.STRIKE_INSPECTION && task.state == TaskState.ASSIGNED;
    }

    private boolean techOf(CareTask task, String username) {
        return roster.techsOf(task.depot.code).stream()
                .anyMatch(tech -> tech.username().equals(username));
    }

    private CareTask takeOver(CareTask task, String by) {
        String before = task.assignee;
        move(task, TaskMove.ACCEPT, by, "Accepted", () -> task.assignee = by);
        if (!by.equals(before)) {
            assigned.fire(new TaskAssigned(task.id, by, before, by));
        }
        return task;
    }

    static void requireOwn(CareTask task, String by, boolean coordinator) {
        if (!coordinator && task.assignee != null && !task.assignee.equals(by)) {
            throw Refused.conflict("The task was given to someone else; ask the coordinator to hand it over");
        }
    }

    private void move(CareTask task, TaskMove move, String by, String words, Runnable change) {
        move.refusal(task.state).ifPresent(why -> {
            throw Refused.conflict(why);
        });
        Instant now = clock.instant();
        task.state = move.result();
        task.touched = true;
        change.run();
        log.write(task, by, words, now);
    }
}
