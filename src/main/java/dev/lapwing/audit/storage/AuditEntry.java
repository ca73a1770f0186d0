package dev.lapwing.audit.storage;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** A change as it was written down. The database refuses to change or delete one. */
@Entity
@Immutable
@Table(name = "audit_entry")
public class AuditEntry extends PanacheEntityBase {
    @Id
    public UUID id;

    /** Its place in the trail, given by the database; later entries have greater ones, and there may be gaps. */
    @Column(insertable = false, updatable = false)
    public Long position;

    @Column(name = "unit_id")
    public UUID unitId;

    public Instant at;
    public String who;
    public String what;
    public String area;
    public String subject;

    /** What it was before, or null. */
    public String was;

    /** What it became, or null. */
    public String became;

    /** Returns entries about a unit that were written before a place in the trail, the newest first. */
    public static List<AuditEntry> ofUnit(UUID unitId, long before, int limit) {
        return find("unitId = ?1 and position < ?2 order by position desc", unitId, before)
                .range(0, limit - 1)
                .list();
    }

    public static long countOf(UUID unitId) {
        return count("unitId", unitId);
    }
}
