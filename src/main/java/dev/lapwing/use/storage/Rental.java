package dev.lapwing.use.storage;

import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.Refused;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** One time a unit was out, is out, or is booked to go out. */
@Entity
public class Rental extends PanacheEntityBase {
    private static final Instant NEVER = Instant.parse("9999-12-31T00:00:00Z");

    @Id
    public UUID id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "unit_id")
    public Unit unit;

    @Column(name = "out_at")
    public Instant outAt;

    /** When it came back or is booked to come back, not included; null while that is not known. */
    @Column(name = "back_at")
    public Instant backAt;

    /** The rental's own number in another system, or null. */
    public String reference;

    /** Returns the rental or refuses with "not found". */
    public static Rental require(Unit unit, UUID id) {
        return Rental.<Rental>find("id = ?1 and unit = ?2", id, unit)
                .firstResultOptional()
                .orElseThrow(() -> Refused.notFound("rental " + id + " of unit " + unit.number));
    }

    /** Returns the rentals of units that end after an instant or have no end. */
    static List<Rental> endingAfter(Collection<UUID> unitIds, Instant instant) {
        return unitIds.isEmpty()
                ? List.of()
                : list("unit.id in ?1 and (backAt is null or backAt > ?2)", unitIds, instant);
    }

    /** Returns a page of a unit's rentals, latest first, those before an instant if given. */
    public static List<Rental> before(Unit unit, Instant outAt, int limit) {
        return find("unit = ?1 and outAt < ?2 order by outAt desc", unit, outAt == null ? NEVER : outAt)
                .range(0, limit - 1)
                .list();
    }

    /** Returns the first rental of a unit that begins after an instant. */
    public static Optional<Rental> nextOf(Unit unit, Instant after) {
        return find("unit = ?1 and outAt > ?2 order by outAt", unit, after).firstResultOptional();
    }

    /** Returns the earliest other rental of the unit that shares time with a span; a null end is open. */
    public static Optional<Rental> sharingTime(Unit unit, UUID except, Instant from, Instant until) {
        return find(
                        "unit = ?1 and id <> ?2 and outAt < ?3 and (backAt is null or backAt > ?4) order by outAt",
                        unit,
                        except,
                        until == null ? NEVER : until,
                        from)
                .firstResultOptional();
    }

    /** Makes others wait that want to write the logs of these units, until the transaction ends. */
    public static void lockLogs(Collection<UUID> unitIds) {
        getEntityManager()
                .createNativeQuery("select id from unit where id in (:ids) order by id for update", UUID.class)
                .setParameter("ids", unitIds)
                .getResultList();
    }

    /**
     * Returns the rentals of units that share time with a span or begin when it does; a null end is open. The end is
     * compared here: given it, H2 would look rentals up by their start and read those of all units.
     */
    public static List<Rental> touching(Collection<UUID> unitIds, Instant from, Instant until) {
        List<Rental> since = list("unit.id in ?1 and (backAt is null or backAt >= ?2)", unitIds, from);
        return since.stream()
                .filter(rental -> until == null || !rental.outAt.isAfter(until))
                .toList();
    }

    /** A place in the list of all rentals in order of time: everything up to and with it has been read. */
    public record Place(Instant outAt, UUID id) {}

    /** Returns up to {@code limit} rentals that follow a place, units and depots loaded with them. */
    public static List<Rental> after(Place place, int limit) {
        return find(
                        "from Rental r join fetch r.unit u join fetch u.depot"
                                + " where r.outAt > ?1 or r.outAt = ?1 and r.id > ?2 order by r.outAt, r.id",
                        place.outAt(),
                        place.id())
                .range(0, limit - 1)
                .list();
    }
}
