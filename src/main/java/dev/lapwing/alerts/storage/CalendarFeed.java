package dev.lapwing.alerts.storage;

import dev.lapwing.platform.Refused;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A calendar of one tech's or one depot's open work, read by whoever has its private address. */
@Entity
@Table(name = "calendar_feed")
public class CalendarFeed extends PanacheEntityBase {
    @Id
    public UUID id;

    @Column(name = "token_hash")
    public String tokenHash;

    /** Sign-in name of the tech, or null when it is a depot's. */
    public String tech;

    @Column(name = "depot_code")
    public String depotCode;

    @Column(name = "made_at")
    public Instant madeAt;

    @Column(name = "made_by")
    public String madeBy;

    /** When its address stopped working, or null. */
    @Column(name = "revoked_at")
    public Instant revokedAt;

    /** Returns the feed or refuses with "not found". */
    public static CalendarFeed require(UUID id) {
        return CalendarFeed.<CalendarFeed>findByIdOptional(id)
                .orElseThrow(() -> Refused.notFound("calendar feed " + id));
    }

    public static Optional<CalendarFeed> inForce(String tokenHash) {
        return find("tokenHash = ?1 and revokedAt is null", tokenHash).firstResultOptional();
    }

    /** Returns the feeds in force, oldest first; a null tech means all. */
    public static List<CalendarFeed> inForceOf(String tech) {
        return list("revokedAt is null and (?1 is null or tech = ?1) order by madeAt, id", tech);
    }
}
