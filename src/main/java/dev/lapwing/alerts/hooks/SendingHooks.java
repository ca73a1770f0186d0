package dev.lapwing.alerts.hooks;

import dev.lapwing.alerts.application.Chance;
import dev.lapwing.alerts.application.OneAtATime;
import dev.lapwing.alerts.application.OneAtATime.Outcome;
import dev.lapwing.alerts.application.SenderThreads;
import dev.lapwing.alerts.domain.Failure;
import dev.lapwing.alerts.domain.RetryRule;
import dev.lapwing.platform.Ids;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.scheduler.Scheduled;
import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.TransactionPhase;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.jboss.logging.Logger;

/** Sends deliveries: at once when one was written, and every few seconds those whose pause is over. */
@ApplicationScoped
class SendingHooks {
    private static final Logger LOG = Logger.getLogger(SendingHooks.class);
    /** Beside the time limits for connecting and for the answer. */
    private static final int SECONDS_ASIDE = 10;

    @Inject
    HookClient client;

    @Inject
    HookSettings settings;

    @Inject
    Chance chance;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    private SenderThreads threads;

    @PostConstruct
    void prepare() {
        threads = new SenderThreads("hook-sender", settings.senders(), this::sendWhatIsDue);
    }

    void written(@Observes(during = TransactionPhase.AFTER_SUCCESS) HookWritten hook) {
        threads.wake();
    }

    @Scheduled(
            identity = "webhook-dispatch",
            every = "{lapwing.webhooks.tick}",
            concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void tick() {
        threads.wake();
    }

    @Scheduled(identity = "webhook-trim", every = "1h", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void trim() {
        QuarkusTransaction.requiringNew()
                .run(() -> HookLine.trim(clock.instant().minus(settings.kept())));
    }

    void stopping(@Observes ShutdownEvent stop) throws InterruptedException {
        threads.stop();
    }

    private void sendWhatIsDue() {
        int seconds = Math.toIntExact(settings.timeout().toSeconds()) * 2 + SECONDS_ASIDE;
        Outcome outcome;
        do {
            outcome = OneAtATime.next(
                    () -> HookLine.due(clock.instant(), OneAtATime.LOOKED_AT), seconds, this::claimAndSend);
        } while (outcome == Outcome.DEALT_WITH);
    }

    private Outcome claimAndSend(UUID id) {
        WebhookPace pace = WebhookPace.claim(WebhookDelivery.targetOf(id)).orElse(null);
        if (pace == null) {
            return Outcome.TAKEN_BY_ANOTHER;
        }
        return HookLine.claim(id, clock.instant())
                .map(delivery -> send(delivery, pace))
                .orElse(Outcome.TAKEN_BY_ANOTHER);
    }

    private Outcome send(WebhookDelivery delivery, WebhookPace pace) {
        WebhookTarget target = WebhookTarget.findById(delivery.targetId);
        HookClient.Answer answer = client.send(target, delivery, clock.instant());
        Instant now = clock.instant();
        log(delivery, answer, now);
        if (answer.failure() == null) {
            delivery.sent(now);
            pace.failures = 0;
        } else {
            failed(delivery, pace, answer.failure(), now);
            LOG.warnf(
                    "Delivery %s to %s is %s after %d attempts: %s",
                    delivery.id, target.address, delivery.state.word(), delivery.attempts, answer.why());
        }
        return Outcome.DEALT_WITH;
    }

    private void failed(WebhookDelivery delivery, WebhookPace pace, Failure failure, Instant now) {
        RetryRule rule = settings.retry();
        pace.failures++;
        Duration rest = rule.pause(failure, pace.failures, chance.next());
        pace.restsUntil = now.plus(rest);
        delivery.failed(failure, rule, rest, now);
    }

    private void log(WebhookDelivery delivery, HookClient.Answer answer, Instant at) {
        var attempt = new WebhookAttempt();
        attempt.id = ids.next();
        attempt.deliveryId = delivery.id;
        attempt.at = at;
        attempt.status = answer.status();
        attempt.millis = answer.millis();
        attempt.error = answer.why();
        attempt.persist();
    }
}
