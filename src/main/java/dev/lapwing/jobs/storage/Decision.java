package dev.lapwing.jobs.storage;

import dev.lapwing.jobs.domain.verdict.Work;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** What the coordinator chose, and why. Never changed. */
@Entity
@Immutable
@Table(name = "job_decision")
public class Decision extends PanacheEntityBase {
    @Id
    @Column(name = "task_id")
    public UUID taskId;

    @Enumerated(EnumType.STRING)
    public Work chosen;

    public String reason;

    @Column(name = "decided_at")
    public Instant decidedAt;

    /** Sign-in name of who decided. */
    @Column(name = "decided_by")
    public String decidedBy;
}
