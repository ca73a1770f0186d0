package dev.lapwing.jobs.storage;

import dev.lapwing.jobs.domain.sealant.Overrule;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** Someone's word for the membrane system of a roof. Never changed. */
@Entity
@Immutable
@Table(name = "job_membrane_word")
public class MembraneWord extends PanacheEntityBase {
    @Id
    public UUID id;

    @Column(name = "unit_id")
    public UUID unitId;

    /** The task on which it was entered. */
    @Column(name = "task_id")
    public UUID taskId;

    /** Whether the coordinator overruled the guard instead of having the system confirmed. */
    public boolean overruled;

    @Column(name = "membrane_system")
    public String system;

    /** Who confirmed, or where the coordinator's word comes from. */
    public String source;

    @Column(name = "given_on")
    public LocalDate givenOn;

    @Column(name = "recorded_at")
    public Instant recordedAt;

    /** Sign-in name of who recorded it. */
    @Column(name = "recorded_by")
    public String recordedBy;

    /** Returns the overrules of units, oldest first. */
    public static List<MembraneWord> overrulesOf(Collection<UUID> unitIds) {
        return unitIds.isEmpty()
                ? List.of()
                : list("unitId in ?1 and overruled = true order by recordedAt, id", unitIds);
    }

    /** Returns what was entered on a task, oldest first. */
    public static List<MembraneWord> ofTask(UUID taskId) {
        return list("taskId = ?1 order by recordedAt, id", taskId);
    }

    public Overrule overrule() {
        return new Overrule(recordedBy, system, source);
    }
}
