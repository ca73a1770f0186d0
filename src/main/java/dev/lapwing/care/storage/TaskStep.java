package dev.lapwing.care.storage;

import dev.lapwing.care.domain.TaskState;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** One step in the life of a task: who did what when. Never changed. */
@Entity
@Table(name = "care_task_step")
public class TaskStep extends PanacheEntityBase {
    @Id
    public UUID id;

    @Column(name = "task_id")
    public UUID taskId;

    /** Its place in the life of the task, from 0. */
    public int position;

    public Instant at;
    public String who;

    /** The state after the step. */
    @Enumerated(EnumType.STRING)
    public TaskState state;

    public String words;

    /** Returns the step that first brought a task into a state it has been in. */
    public static TaskStep firstIn(UUID taskId, TaskState state) {
        return find("taskId = ?1 and state = ?2 order by position", taskId, state)
                .firstResult();
    }

    public static List<TaskStep> of(UUID taskId) {
        return list("taskId = ?1 order by position", taskId);
    }

    /** Returns the steps of tasks, those of each in order. */
    public static List<TaskStep> of(Collection<UUID> taskIds) {
        return taskIds.isEmpty() ? List.of() : list("taskId in ?1 order by taskId, position", taskIds);
    }
}
