package dev.lapwing.alerts.hooks;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** How a target fares: after a failure it rests, so that one that is away keeps nobody busy. */
@Entity
@Table(name = "webhook_pace")
public class WebhookPace extends PanacheEntityBase {
    @Id
    @Column(name = "target_id")
    UUID targetId;

    /** Failures since the last success. */
    int failures;

    @Column(name = "rests_until")
    Instant restsUntil;

    /** Locks a target's pace until the transaction ends; empty when another sender has it. */
    static Optional<WebhookPace> claim(UUID targetId) {
        List<?> found = getEntityManager()
                .createNativeQuery(
                        "select * from webhook_pace where target_id = :target for update skip locked",
                        WebhookPace.class)
                .setParameter("target", targetId)
                .getResultList();
        return found.stream().map(WebhookPace.class::cast).findFirst();
    }
}
