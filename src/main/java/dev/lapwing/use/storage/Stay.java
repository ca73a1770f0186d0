package dev.lapwing.use.storage;

import dev.lapwing.fleet.Storage;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.Refused;
import dev.lapwing.use.domain.LogKind;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** One time a unit was, is, or is booked to be in storage or in the workshop. */
@Entity
public class Stay extends PanacheEntityBase {
    private static final Instant NEVER = Instant.parse("9999-12-31T00:00:00Z");

    @Id
    public UUID id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "unit_id")
    public Unit unit;

    /** Storage or workshop. */
    @Enumerated(EnumType.STRING)
    public LogKind kind;

    @Column(name = "from_at")
    public Instant fromAt;

    /** When it ended or is booked to end, not included; null until further notice. */
    @Column(name = "until_at")
    public Instant untilAt;

    /** Where it stands in storage, or null when that is where it stands between rentals. */
    @Enumerated(EnumType.STRING)
    public Storage place;

    public String note;

    /** Sign-in name of who noted it last. */
    @Column(name = "noted_by")
    public String notedBy;

    @Column(name = "noted_at")
    public Instant notedAt;

    /** Returns the stay or refuses with "not found". */
    public static Stay require(Unit unit, UUID id) {
        return Stay.<Stay>find("id = ?1 and unit = ?2", id, unit)
                .firstResultOptional()
                .orElseThrow(() -> Refused.notFound("stay " + id + " of unit " + unit.number));
    }

    /** Returns a page of a unit's stays, latest first, those before an instant if given. */
    public static List<Stay> before(Unit unit, Instant fromAt, int limit) {
        return find("unit = ?1 and fromAt < ?2 order by fromAt desc", unit, fromAt == null ? NEVER : fromAt)
                .range(0, limit - 1)
                .list();
    }

    /** Returns the earliest other stay of the unit that shares time with a span; a null end is open. */
    public static Optional<Stay> sharingTime(Unit unit, UUID except, Instant from, Instant until) {
        return find(
                        "unit = ?1 and id <> ?2 and fromAt < ?3 and (untilAt is null or untilAt > ?4) order by fromAt",
                        unit,
                        except,
                        until == null ? NEVER : until,
                        from)
                .firstResultOptional();
    }

    /** Returns the stays of units that end after an instant or have no end. */
    static List<Stay> endingAfter(Collection<UUID> unitIds, Instant instant) {
        return unitIds.isEmpty()
                ? List.of()
                : list("unit.id in ?1 and (untilAt is null or untilAt > ?2)", unitIds, instant);
    }
}
