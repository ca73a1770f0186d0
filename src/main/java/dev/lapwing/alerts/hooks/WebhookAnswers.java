package dev.lapwing.alerts.hooks;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.alerts.domain.MailState;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** Webhooks as they are answered; times are in UTC. */
final class WebhookAnswers {
    private WebhookAnswers() {}

    /** A target; the secret is there only in the answer that made it. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Target(
            UUID id,
            String address,
            List<HookKind> events,
            String depot,
            String state,
            OffsetDateTime madeAt,
            String madeBy,
            String secret) {}

    /** A delivery with its attempts. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Delivery(
            UUID id,
            HookKind event,
            MailState state,
            OffsetDateTime createdAt,
            OffsetDateTime sentAt,
            OffsetDateTime nextAttemptAt,
            List<Attempt> attempts) {}

    /**
     * One attempt.
     *
     * @param status HTTP status of the answer; missing when none came
     * @param error why it failed; missing when it did not
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Attempt(OffsetDateTime at, Integer status, long millis, String error) {}

    static Target of(WebhookTarget target) {
        return target(target, null);
    }

    static Target withSecret(WebhookTarget target) {
        return target(target, target.secret);
    }

    private static Target target(WebhookTarget target, String secret) {
        return new Target(
                target.id,
                target.address,
                target.kinds(),
                target.depotCode,
                target.paused ? "paused" : "active",
                utc(target.madeAt),
                target.madeBy,
                secret);
    }

    static List<Delivery> of(List<WebhookDelivery> deliveries) {
        Map<UUID, List<WebhookAttempt>> attempts =
                WebhookAttempt.of(deliveries.stream().map(one -> one.id).toList()).stream()
                        .collect(Collectors.groupingBy(attempt -> attempt.deliveryId));
        return deliveries.stream()
                .map(one -> of(one, attempts.getOrDefault(one.id, List.of())))
                .toList();
    }

    private static Delivery of(WebhookDelivery delivery, List<WebhookAttempt> attempts) {
        return new Delivery(
                delivery.id,
                delivery.kind,
                delivery.state,
                utc(delivery.createdAt),
                utc(delivery.sentAt),
                MailState.TO_GO.contains(delivery.state) ? utc(delivery.nextAttemptAt) : null,
                attempts.stream()
                        .map(one -> new Attempt(utc(one.at), one.status, one.millis, one.error))
                        .toList());
    }

    private static OffsetDateTime utc(Instant instant) {
        return instant == null ? null : instant.atOffset(ZoneOffset.UTC);
    }
}
