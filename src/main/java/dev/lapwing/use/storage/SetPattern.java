package dev.lapwing.use.storage;

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

/** The use pattern of a unit as the coordinator set it, over what the rental log says. */
@Entity
@Table(name = "use_pattern")
public class SetPattern extends PanacheEntityBase {
    @Id
    @Column(name = "unit_id")
    public UUID unitId;

    public String pattern;

    public String reason;

    @Column(name = "set_by")
    public String setBy;

    @Column(name = "set_at")
    public Instant setAt;

    /** Last day it counts, or null when it has no end. */
    @Column(name = "set_until")
    public LocalDate setUntil;

    public static List<SetPattern> of(Collection<UUID> unitIds) {
        return unitIds.isEmpty() ? List.of() : list("unitId in ?1", unitIds);
    }
}
