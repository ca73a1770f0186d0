package dev.lapwing.alerts.live;

import io.quarkus.hibernate.orm.panache.Panache;
import java.time.Instant;
import java.util.List;

/**
 * Gives events their places, after the transactions that wrote them.
 *
 * <p>The counter's row is locked while that is done, so places become visible in their order, whichever node gives them:
 * no event ever appears below one that was read before.
 */
final class LiveNumbering {
    private static final int AT_A_TIME = 500;
    private static final String WAITING = "select written from live_event where position is null order by written";

    private LiveNumbering() {}

    /** Numbers what waits for it; returns whether there may be more. Runs in a transaction of its own. */
    static boolean run() {
        if (waiting(1).isEmpty()) {
            return false;
        }
        long place = ((Number) Panache.getEntityManager()
                        .createNativeQuery("select last_position from live_counter where id = 1 for update")
                        .getSingleResult())
                .longValue();
        List<Long> written = waiting(AT_A_TIME);
        for (long one : written) {
            place++;
            Panache.getEntityManager()
                    .createNativeQuery("update live_event set position = :place where written = :one")
                    .setParameter("place", place)
                    .setParameter("one", one)
                    .executeUpdate();
        }
        Panache.getEntityManager()
                .createNativeQuery("update live_counter set last_position = :place where id = 1")
                .setParameter("place", place)
                .executeUpdate();
        return written.size() == AT_A_TIME;
    }

    /** Returns the last place that was given, or 0. */
    static long last() {
        return ((Number) Panache.getEntityManager()
                        .createNativeQuery("select last_position from live_counter where id = 1")
                        .getSingleResult())
                .longValue();
    }

    /** Removes the numbered events from before a time. */
    static long trim(Instant before) {
        return LiveEvent.delete("position is not null and at < ?1", before);
    }

    private static List<Long> waiting(int most) {
        List<?> found = Panache.getEntityManager()
                .createNativeQuery(WAITING)
                .setMaxResults(most)
                .getResultList();
        return found.stream().map(one -> ((Number) one).longValue()).toList();
    }
}
