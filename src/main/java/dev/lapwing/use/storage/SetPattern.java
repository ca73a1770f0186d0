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
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** The use pattern of a unit as the coordinator set it, over what the rental log says. */
@Entity
@Table(name = "use_pattern")
public class SetPattern extends PanacheEntityBase {
    private static final LocalDate FOR_GOOD = LocalDate.of(9999, 12, 31);

    @Id
    @Column(name = "unit_id")
    public UUID unitId;

    @Enumerated(EnumType.STRING)
    public UsePattern pattern;

    public String reason;

    @Column(name = "set_by")
    public String setBy;

    @Column(name = "set_at")
    public Instant setAt;

    /** Last day it counts, or null when it has no end. */
    @Column(name = "set_until")
    public LocalDate setUntil;

    /** Returns the pattern as the rules read it, in local days of the unit's depot. */
    public PatternOverride override(ZoneId zone) {
        LocalDate until = setUntil == null ? FOR_GOOD : setUntil;
        LocalDate from = setAt.atZone(zone).toLocalDate();
        return new PatternOverride(pattern, reason, setBy, from.isAfter(until) ? until : from, until);
    }

    public static List<SetPattern> of(Collection<UUID> unitIds) {
        return unitIds.isEmpty() ? List.of() : list("unitId in ?1", unitIds);
    }
}
