package dev.lapwing.alerts.hooks;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** One attempt at a delivery: what was answered, and how long that took. */
@Entity
@Table(name = "webhook_attempt")
public class WebhookAttempt extends PanacheEntityBase {
    @Id
    UUID id;

    @Column(name = "delivery_id")
    UUID deliveryId;

    Instant at;

    /** HTTP status of the answer, or null when none came. */
    Integer status;

    long millis;

    /** Why it counts as failed, or null when it does not. */
    String error;

    /** Returns the attempts at deliveries, oldest first. */
    static List<WebhookAttempt> of(Collection<UUID> deliveryIds) {
        return deliveryIds.isEmpty() ? List.of() : list("deliveryId in ?1 order by at, id", deliveryIds);
    }
}
