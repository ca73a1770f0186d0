package dev.lapwing.alerts.hooks;

import dev.lapwing.alerts.domain.Failure;
import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.domain.RetryRule;
import dev.lapwing.platform.Refused;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** Something a target is told, written in the transaction of what it tells of and sent after it. */
@Entity
@Table(name = "webhook_delivery")
public class WebhookDelivery extends PanacheEntityBase {
    @Id
    UUID id;

    @Column(name = "target_id")
    UUID targetId;

    @Enumerated(EnumType.STRING)
    HookKind kind;

    int priority;
    String body;

    @Enumerated(EnumType.STRING)
    MailState state;

    int attempts;
    int refusals;

    @Column(name = "next_attempt_at")
    Instant nextAttemptAt;

    @Column(name = "created_at")
    Instant createdAt;

    @Column(name = "sent_at")
    Instant sentAt;

    /** Returns the delivery of a target or refuses with "not found". */
    static WebhookDelivery require(UUID targetId, UUID id) {
        return WebhookDelivery.<WebhookDelivery>find("id = ?1 and targetId = ?2", id, targetId)
                .firstResultOptional()
                .orElseThrow(() -> Refused.notFound("delivery " + id));
    }

    /** Returns whose delivery it is, without loading it. */
    static UUID targetOf(UUID id) {
        return getEntityManager()
                .createQuery("select d.targetId from WebhookDelivery d where d.id = :id", UUID.class)
                .setParameter("id", id)
                .getSingleResult();
    }

    /** Returns a page of a target's deliveries, the newest first, after one of them if given. */
    static List<WebhookDelivery> after(UUID targetId, WebhookDelivery last, int limit) {
        String all = "targetId = ?1";
        String order = " order by createdAt desc, id desc";
        var found = last == null
                ? WebhookDelivery.<WebhookDelivery>find(all + order, targetId)
                : WebhookDelivery.<WebhookDelivery>find(
                        all + " and (createdAt < ?2 or createdAt = ?2 and id < ?3)" + order,
                        targetId,
                        last.createdAt,
                        last.id);
        return found.range(0, limit - 1).list();
    }

    void sent(Instant now) {
        attempts++;
        state = MailState.SENT;
        sentAt = now;
    }

    void failed(Failure failure, RetryRule rule, Duration pause, Instant now) {
        attempts++;
        refusals++;
        state = rule.givesUp(failure, refusals) ? MailState.GIVEN_UP : MailState.FAILED;
        nextAttemptAt = now.plus(pause);
    }

    void sendAgain(Instant now) {
        if (state != MailState.GIVEN_UP) {
            throw Refused.conflict("The delivery is " + state.word() + "; only one that was given up is sent again");
        }
        state = MailState.WAITING;
        refusals = 0;
        nextAttemptAt = now;
    }
}
