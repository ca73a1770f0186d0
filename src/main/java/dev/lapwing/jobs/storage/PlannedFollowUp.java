package dev.lapwing.jobs.storage;

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
import java.util.List;
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

    public static List<PlannedFollowUp> ofSheet(UUID sheetId) {
        return list("sheetId", sheetId);
    }
}
