package dev.lapwing.care.storage;

import dev.lapwing.care.domain.HoldCause;
import dev.lapwing.care.domain.HoldState;
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
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A unit must not be rented. Ends only by a signed release. */
@Entity
public class Hold extends PanacheEntityBase {
    @Id
    public UUID id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "unit_id")
    public Unit unit;

    @Enumerated(EnumType.STRING)
    public HoldCause cause;

    /** The strike, question or task that caused it. */
    @Column(name = "cause_id")
    public UUID causeId;

    /** What happened, for people. */
    public String words;

    @Enumerated(EnumType.STRING)
    public HoldState state;

    @Column(name = "opened_at")
    public Instant openedAt;

    @Column(name = "opened_by")
    public String openedBy;

    @Column(name = "released_at")
    public Instant releasedAt;

    @Column(name = "released_by")
    public String releasedBy;

    /** What the person who released it stated. */
    public String statement;

    /** What the release certified, such as {@code repair-unnecessary}; null while open or when an answer ended it. */
    public String ground;

    public static Optional<Hold> ofCause(UUID causeId) {
        return find("causeId", causeId).firstResultOptional();
    }

    /** Returns the open holds of units, oldest first. */
    public static List<Hold> openOf(Collection<UUID> unitIds) {
        return unitIds.isEmpty()
                ? List.of()
                : list("unit.id in ?1 and state = ?2 order by openedAt", unitIds, HoldState.OPEN);
    }

    /** Returns a page of holds, oldest first, after one of them if given; a null state means all. */
    public static List<Hold> after(UUID last, HoldState state, int limit) {
        Hold place = last == null ? null : findById(last);
        return find(
                        "from Hold h join fetch h.unit u join fetch u.depot where (?1 is null or h.state = ?1)"
                                + " and (h.openedAt > ?2 or h.openedAt = ?2 and h.id > ?3) order by h.openedAt, h.id",
                        state,
                        place == null ? Instant.EPOCH : place.openedAt,
                        place == null ? new UUID(0, 0) : place.id)
                .range(0, limit - 1)
                .list();
    }

    /** Returns the open holds of a depot and of units whose number contains a text, oldest first; null lets all through. */
    public static List<Hold> openAt(String depotCode, String unitText, int limit) {
        return find(
                        "from Hold h join fetch h.unit u join fetch u.depot d where h.state = ?1"
                                + " and (?2 is null or d.code = ?2)"
                                + " and (?3 is null or lower(u.number) like ?3 escape '!') order by h.openedAt, h.id",
                        HoldState.OPEN,
                        depotCode,
                        unitText == null ? null : Unit.numberPattern(unitText))
                .range(0, limit - 1)
                .list();
    }

    /** Returns how many holds are in a state; null counts all. */
    public static long countIn(HoldState state) {
        return state == null ? count() : count("state", state);
    }

    /**
     * Keeps others from ending the hold until the transaction ends, and reads it again. In plain SQL: the dialect's own
     * clause is not understood by both engines.
     */
    public void lock() {
        flush();
        getEntityManager()
                .createNativeQuery("select id from hold where id = :id for update", UUID.class)
                .setParameter("id", id)
                .getSingleResult();
        getEntityManager().refresh(this);
    }

    /** Ends the hold. */
    public void release(String by, String why, Instant at) {
        state = HoldState.RELEASED;
        releasedAt = at;
        releasedBy = by;
        statement = why;
    }
}
