package dev.lapwing.web;

import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.function.Supplier;

/** Makes a request that comes twice with one key happen once. */
@ApplicationScoped
public class Repeats {
    /** What was answered the first time. */
    public record Kept(int status, String body) {}

    @Inject
    EntityManager database;

    @Inject
    Clock clock;

    /**
     * Runs the act if the person has not used the key, else returns what was kept then. The key stands or falls with
     * the caller's transaction; a request that finds the key in use waits for the one that holds it.
     *
     * @param fingerprint tells requests apart; the same key with another one is refused
     */
    @Transactional(Transactional.TxType.MANDATORY)
    public Kept once(String actor, String key, String fingerprint, Supplier<Kept> act) {
        if (!claim(actor, key, fingerprint)) {
            return earlier(actor, key, fingerprint);
        }
        Kept kept = act.get();
        remember(actor, key, kept);
        return kept;
    }

    private boolean claim(String actor, String key, String fingerprint) {
        return database.createNativeQuery("""
                insert into idempotent_answer (actor, idempotency_key, fingerprint, created_at)
                values (:actor, :key, :fingerprint, :now) on conflict do nothing
                """)
                        .setParameter("actor", actor)
                        .setParameter("key", key)
                        .setParameter("fingerprint", fingerprint)
                        .setParameter("now", Instant.now(clock))
                        .executeUpdate()
                == 1;
    }

    private Kept earlier(String actor, String key, String fingerprint) {
        Object[] row = (Object[]) database.createNativeQuery("""
                select fingerprint, status, body from idempotent_answer
                where actor = :actor and idempotency_key = :key
                """, Object[].class)
                .setParameter("actor", actor)
                .setParameter("key", key)
                .getSingleResult();
        if (!fingerprint.equals(row[0])) {
            throw Refused.keyReused();
        }
        return new Kept(((Number) row[1]).intValue(), (String) row[2]);
    }

    private void remember(String actor, String key, Kept kept) {
        database.createNativeQuery("""
                update idempotent_answer set status = :status, body = :body
                where actor = :actor and idempotency_key = :key
                """)
                .setParameter("status", kept.status())
                .setParameter("body", kept.body())
                .setParameter("actor", actor)
                .setParameter("key", key)
                .executeUpdate();
    }
}
