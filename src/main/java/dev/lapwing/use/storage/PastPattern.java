package dev.lapwing.use.storage;

import dev.lapwing.use.domain.PatternOverride;
import dev.lapwing.use.domain.UsePattern;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** The days on which a pattern counted that was set and has since been replaced or ended. Never changed. */
@Entity
@Table(name = "use_pattern_past")
public class PastPattern extends PanacheEntityBase {
    @Id
    public UUID id;

    @Column(name = "unit_id")
    public UUID unitId;

    @Enumerated(EnumType.STRING)
    public UsePattern pattern;

    public String reason;

    @Column(name = "set_by")
    public String setBy;

    @Column(name = "set_from")
    public LocalDate setFrom;

    @Column(name = "set_until")
    public LocalDate setUntil;

    public PatternOverride override() {
        return new PatternOverride(pattern, reason, setBy, setFrom, setUntil);
    }

    public static List<PastPattern> of(Collection<UUID> unitIds) {
        return unitIds.isEmpty() ? List.of() : list("unitId in ?1", unitIds);
    }
}
