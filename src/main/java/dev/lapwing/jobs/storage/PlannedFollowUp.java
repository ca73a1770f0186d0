package dev.lapwing.jobs.storage;

import dev.lapwing.care.domain.TaskState;
import dev.lapwing.jobs.domain.verdict.Urgency;
import dev.lapwing.jobs.domain.verdict.Work;
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
import java.util.Set;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** Work that a signed sheet led to. Never changed. */
@Entity
@Immutable
@Table(name = "job_follow_up")
public class PlannedFollowUp extends PanacheEntityBase {
    /** The task in which it is done. */
    @Id
    @Column(name = "task_id")
    public UUID taskId;

    /** The sheet that led to it, by its task. */
    @Column(name = "sheet_id")
    public UUID sheetId;

    @Enumerated(EnumType.STRING)
    public Work work;

    @Enumerated(EnumType.STRING)
    public Urgency urgency;

    @Column(name = "due_at")
    public Instant dueAt;

    /** Whether a hold stands until it is done. */
    public boolean holds;

    /** Returns what tasks were planned as; a task that no sheet led to has none. */
    public static List<PlannedFollowUp> ofTasks(Collection<UUID> taskIds) {
        return taskIds.isEmpty() ? List.of() : list("taskId in ?1", taskIds);
    }

    /** Returns those of the sheets that referred the roof to a workshop, with the referral still in one of the states. */
    public static List<UUID> openReferrals(Collection<UUID> sheetIds, Set<TaskState> states) {
        return sheetIds.isEmpty()
                ? List.of()
                : getEntityManager()
                        .createQuery(
                                "select f.sheetId from PlannedFollowUp f, CareTask t where t.id = f.taskId"
                                        + " and f.work = WORKSHOP_REFERRAL and f.sheetId in :sheets and t.state in :states",
                                UUID.class)
                        .setParameter("sheets", sheetIds)
                        .setParameter("states", states)
                        .getResultList();
    }

    public static List<PlannedFollowUp> ofSheet(UUID sheetId) {
        return list("sheetId", sheetId);
    }
}
