package dev.lapwing.jobs.storage;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** That a finding was taken back. Never changed. */
@Entity
@Immutable
@Table(name = "job_finding_withdrawal")
public class WithdrawnFinding extends PanacheEntityBase {
    @Id
    @Column(name = "finding_id")
    public UUID findingId;

    @Column(name = "task_id")
    public UUID taskId;

    @Column(name = "withdrawn_at")
    public Instant withdrawnAt;

    /** Sign-in name of who took it back. */
    @Column(name = "withdrawn_by")
    public String withdrawnBy;

    @Column(name = "by_link")
    public boolean byLink;

    public static List<WithdrawnFinding> of(UUID taskId) {
        return list("taskId = ?1 order by withdrawnAt, findingId", taskId);
    }
}
