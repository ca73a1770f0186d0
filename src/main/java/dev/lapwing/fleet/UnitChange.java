package dev.lapwing.fleet;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** One field of what is known of a unit, as it was and as somebody made it. Never changed. */
@Entity
@Table(name = "unit_change")
public class UnitChange extends PanacheEntityBase {
    @Id
    public UUID id;

    @Column(name = "unit_id")
    public UUID unitId;

    @Column(name = "changed_at")
    public Instant changedAt;

    /** Sign-in name of who changed it. */
    @Column(name = "changed_by")
    public String changedBy;

    /** Its place among the fields changed in one act, from 0. */
    public int position;

    /** The field as the API names it, such as {@code roof.surface}. */
    public String field;

    /** What it was, or null for nothing. */
    @Column(name = "old_text")
    public String oldText;

    /** What it became, or null for nothing. */
    @Column(name = "new_text")
    public String newText;

    /** Why, or null when no reason was asked for. */
    public String reason;

    /** Returns the changes of a unit, the newest first, leaving out so many. */
    public static List<UnitChange> of(UUID unitId, int leftOut, int limit) {
        return find("unitId = ?1 order by changedAt desc, position, id", unitId)
                .range(leftOut, leftOut + limit - 1)
                .list();
    }
}
