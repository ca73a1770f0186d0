package dev.lapwing.alerts.storage;

import io.quarkus.hibernate.orm.panache.Panache;
import java.time.Instant;
import java.time.LocalDate;

/** Remembers for which days of a depot the digests were written. */
public final class DigestDays {
    private DigestDays() {}

    /** Claims a day; returns false when it was claimed before. Waits for another transaction that is at it. */
    public static boolean claim(String depotCode, LocalDate day, Instant now) {
        return Panache.getEntityManager()
                        .createNativeQuery("""
                                insert into digest_day (depot_code, on_date, written_at) values (:depot, :day, :now)
                                on conflict do nothing
                                """)
                        .setParameter("depot", depotCode)
                        .setParameter("day", day)
                        .setParameter("now", now)
                        .executeUpdate()
                == 1;
    }
}
