package dev.lapwing.alerts.rain;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;

/** What the feed said last of a depot, and when it is asked again. */
@Entity
@Table(name = "rain_forecast")
class StoredForecast extends PanacheEntityBase {
    private static final int LONGEST_PROBLEM = 500;

    @Id
    @Column(name = "depot_code")
    String depot;

    /** As the feed wrote it; null until it answered once. */
    String forecast;

    @Column(name = "issued_at")
    Instant issuedAt;

    @Column(name = "fetched_at")
    Instant fetchedAt;

    @Column(name = "last_modified")
    String lastModified;

    /** How often in a row it could not be fetched. */
    int failures;

    String problem;

    @Column(name = "next_try_at")
    Instant nextTryAt;

    static StoredForecast of(String depot, Instant now) {
        StoredForecast stored = findById(depot);
        if (stored == null) {
            stored = new StoredForecast();
            stored.depot = depot;
            stored.nextTryAt = now;
            stored.persist();
        }
        return stored;
    }

    /** When a forecast was fetched, without the forecast. */
    record Heading(String depot, Instant fetchedAt) {}

    /** Returns what there is that was made at an instant or later. */
    static List<Heading> issuedSince(Instant since) {
        return find("forecast is not null and issuedAt >= ?1 order by depot", since)
                .project(Heading.class)
                .list();
    }

    /** Notes a failure. What the feed said last is asked for anew: it may be what cannot be read. */
    void failed(String why, Instant nextTry) {
        failures++;
        lastModified = null;
        problem = why.length() <= LONGEST_PROBLEM ? why : why.substring(0, LONGEST_PROBLEM);
        nextTryAt = nextTry;
    }
}
