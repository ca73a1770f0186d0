package dev.lapwing.alerts.hooks;

import dev.lapwing.alerts.domain.MailState;
import io.quarkus.hibernate.orm.panache.Panache;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The deliveries that have to go. */
final class HookLine {
    private HookLine() {}

    /** Returns the first delivery that is due of each target that neither rests nor is paused, the most urgent first. */
    static List<UUID> due(Instant now, int most) {
        List<?> found = Panache.getEntityManager()
                .createNativeQuery("""
                        select id from (
                          select d.id, d.priority, d.next_attempt_at, row_number() over (
                            partition by d.target_id order by d.priority, d.next_attempt_at, d.id) as place_in_line
                          from webhook_delivery d
                          join webhook_target t on t.id = d.target_id
                          join webhook_pace p on p.target_id = d.target_id
                          where d.state in ('WAITING', 'FAILED') and d.next_attempt_at <= :now
                            and t.paused = false and t.removed_at is null and p.rests_until <= :now) as waiting
                        where place_in_line = 1 order by priority, next_attempt_at, id
                        """, UUID.class)
                .setParameter("now", now)
                .setMaxResults(most)
                .getResultList();
        return found.stream().map(UUID.class::cast).toList();
    }

    /** Locks a delivery until the transaction ends; empty when another has it or it has gone meanwhile. */
    static Optional<WebhookDelivery> claim(UUID id, Instant now) {
        List<?> found = Panache.getEntityManager()
                .createNativeQuery("""
                        select * from webhook_delivery
                        where id = :id and state in ('WAITING', 'FAILED') and next_attempt_at <= :now
                        for update skip locked
                        """, WebhookDelivery.class)
                .setParameter("id", id)
                .setParameter("now", now)
                .getResultList();
        return found.stream().map(WebhookDelivery.class::cast).findFirst();
    }

    /** Removes from the log what ended before a time. */
    static void trim(Instant before) {
        WebhookAttempt.delete(
                "deliveryId in (select d.id from WebhookDelivery d where d.createdAt < ?1 and d.state not in ?2)",
                before,
                MailState.TO_GO);
        WebhookDelivery.delete("createdAt < ?1 and state not in ?2", before, MailState.TO_GO);
    }
}
