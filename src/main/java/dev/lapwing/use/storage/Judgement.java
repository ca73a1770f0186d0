package dev.lapwing.use.storage;

import dev.lapwing.use.domain.UseInForce;
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

/** What the rental log last said of a unit's use. Written by the sweep; read only here. */
@Entity
@Table(name = "use_judgement")
public class Judgement extends PanacheEntityBase {
    @Id
    @Column(name = "unit_id")
    UUID unitId;

    @Enumerated(EnumType.STRING)
    UsePattern pattern;

    LocalDate since;
    String why;

    @Column(name = "judged_on")
    LocalDate judgedOn;

    public UUID unitId() {
        return unitId;
    }

    public UseInForce use() {
        return new UseInForce(pattern, since, why);
    }

    public static List<Judgement> of(Collection<UUID> unitIds) {
        return unitIds.isEmpty() ? List.of() : list("unitId in ?1", unitIds);
    }
}
