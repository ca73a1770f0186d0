package dev.lapwing.alerts.storage;

import io.quarkus.hibernate.orm.panache.Panache;
import java.time.Instant;
import java.time.LocalDate;

/** Remembers for which days and weeks of a depot the digests were written. */
public final class DigestDays {
    private DigestDays() {}

    /** Claims a day; returns false when it was claimed before. Waits for another transaction that is at it. */
    public static boolean claim(String depotCode, LocalDate day, Instant now) {
        return claim("digest_day (depot_code, on_date, written_at)", depotCode, day, now);
    }

    /** Claims the week that begins on a Monday; returns false when it was claimed before. */
    public static boolean claimWeek(String depotCode, LocalDate monday, Instant now) {
        return claim("digest_week (depot_code, monday, written_at)", depotCode, monday, now);
    }

    private static boolean claim(String table, String depotCode, LocalDate day, Instant now) {
        return Panache.getEntityManager()
                        .createNativeQuery(
                                "insert into " + table + " values (:depot, :day, :now) on conflict do nothing")
                        .setParameter("depot", depotCode)
                        .setParameter("day", day)
                        .setParameter("now", now)
                        .executeUpdate()
                == 1;
    }
}
