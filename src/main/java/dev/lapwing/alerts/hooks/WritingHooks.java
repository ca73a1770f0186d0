package dev.lapwing.alerts.hooks;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.care.HoldOpened;
import dev.lapwing.care.HoldReleased;
import dev.lapwing.care.StrikeWorkOpened;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.platform.Ids;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Writes down what targets are told, in the transaction of what it tells of. */
@ApplicationScoped
class WritingHooks {
    /** The body of a delivery; times are in UTC. What does not apply is left out. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Body(
            UUID id,
            String event,
            OffsetDateTime at,
            String unit,
            String depot,
            UUID hold,
            String cause,
            String words,
            UUID task,
            String by,
            String link) {}

    @ConfigProperty(name = "lapwing.public-url", defaultValue = "http://localhost:8080")
    String publicUrl;

    @Inject
    Event<HookWritten> written;

    @Inject
    ObjectMapper json;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    @Transactional(Transactional.TxType.MANDATORY)
    void strikeWorkOpened(@Observes StrikeWorkOpened event) {
        Hold hold = Hold.findById(event.holdId());
        tell(HookKind.STRIKE, hold, hold.openedAt, hold.openedBy, hold.words, event.taskId());
    }

    @Transactional(Transactional.TxType.MANDATORY)
    void holdOpened(@Observes HoldOpened event) {
        Hold hold = Hold.findById(event.holdId());
        tell(HookKind.HOLD, hold, hold.openedAt, hold.openedBy, hold.words, null);
    }

    @Transactional(Transactional.TxType.MANDATORY)
    void holdReleased(@Observes HoldReleased event) {
        Hold hold = Hold.findById(event.holdId());
        tell(HookKind.RELEASE, hold, hold.releasedAt, hold.releasedBy, hold.statement, null);
    }

    /** Writes a delivery that only tries whether a target works. */
    WebhookDelivery test(WebhookTarget target, String by) {
        Instant now = clock.instant();
        UUID id = ids.next();
        var body = new Body(id, HookKind.TEST.word(), utc(now), null, null, null, null, null, null, by, publicUrl);
        return write(target, HookKind.TEST, body, now);
    }

    private void tell(HookKind kind, Hold hold, Instant at, String by, String words, UUID task) {
        String link = publicUrl + (task == null ? "/units/" + path(hold.unit.number) : "/tasks/" + task);
        for (WebhookTarget target : WebhookTarget.hearing(kind, hold.unit.depot.code)) {
            var body = new Body(
                    ids.next(),
                    kind.word(),
                    utc(at),
                    hold.unit.number,
                    hold.unit.depot.code,
                    hold.id,
                    hold.cause.word(),
                    words,
                    task,
                    by,
                    link);
            write(target, kind, body, clock.instant());
        }
    }

    private WebhookDelivery write(WebhookTarget target, HookKind kind, Body body, Instant now) {
        var delivery = new WebhookDelivery();
        delivery.id = body.id();
        delivery.targetId = target.id;
        delivery.kind = kind;
        delivery.priority = kind.urgency().priority();
        delivery.body = text(body);
        delivery.state = MailState.WAITING;
        delivery.nextAttemptAt = now;
        delivery.createdAt = now;
        delivery.persist();
        written.fire(new HookWritten());
        return delivery;
    }

    private String text(Body body) {
        try {
            return json.writeValueAsString(body);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("what targets are told is always JSON", e);
        }
    }

    private static String path(String number) {
        return URLEncoder.encode(number, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private static OffsetDateTime utc(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC);
    }
}
