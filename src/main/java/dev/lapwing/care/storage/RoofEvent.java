package dev.lapwing.care.storage;

import dev.lapwing.care.domain.RoofEventKind;
import dev.lapwing.fleet.Unit;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** Something that happened to a roof, beside a strike, and asks for an inspection. Never changed. */
@Entity
@Table(name = "care_event")
public class RoofEvent extends PanacheEntityBase {
    private static final Instant NEVER = Instant.parse("9999-12-31T00:00:00Z");

    @Id
    public UUID id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "unit_id")
    public Unit unit;

    @Enumerated(EnumType.STRING)
    public RoofEventKind kind;

    /** When it happened or was noticed. */
    @Column(name = "seen_at")
    public Instant seenAt;

    public String note;

    /** Who noticed it, as entered. */
    @Column(name = "reported_by")
    public String reportedBy;

    /** When it was entered; the time for its inspection counts from here. */
    @Column(name = "reported_at")
    public Instant reportedAt;

    /** Sign-in name of who entered it. */
    @Column(name = "entered_by")
    public String enteredBy;

    /** Returns a page of a unit's events, the latest entered first, those before an instant if given. */
    public static List<RoofEvent> before(Unit unit, Instant reportedAt, int limit) {
        return find(
                        "unit = ?1 and reportedAt < ?2 order by reportedAt desc",
                        unit,
                        reportedAt == null ? NEVER : reportedAt)
                .range(0, limit - 1)
                .list();
    }
}
