package dev.lapwing.alerts.hooks;

import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.fleet.Depot;
import dev.lapwing.web.Dates;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;

/** Webhooks as their pages show them; times are in UTC. */
@ApplicationScoped
class HookRows {
    /**
     * A target.
     *
     * @param failing how often in a row it did not take a delivery
     */
    record Target(
            UUID id,
            String address,
            String events,
            String depot,
            boolean paused,
            int failing,
            long waiting,
            String madeAt,
            String madeBy) {
        public boolean silent() {
            return failing > 0;
        }
    }

    /** A delivery with what was answered each time. */
    record Delivery(
            UUID id, String event, String written, String state, String nextAt, boolean canGoAgain, List<Try> tries) {}

    /**
     * One attempt.
     *
     * @param answer the code, or "no answer"
     * @param why null when it was taken
     */
    record Try(String at, String answer, long millis, String why) {}

    static List<String> wordsToChoose() {
        return HookKind.TO_CHOOSE.stream().sorted().map(HookKind::word).toList();
    }

    List<Target> targets() {
        return WebhookTarget.present().stream().map(this::of).toList();
    }

    Target of(WebhookTarget target) {
        return new Target(
                target.id,
                target.address,
                target.kinds.replace(",", ", "),
                target.depotCode == null ? "all depots" : Depot.<Depot>findById(target.depotCode).name,
                target.paused,
                WebhookPace.<WebhookPace>findById(target.id).failures,
                WebhookDelivery.count("targetId = ?1 and state in ?2", target.id, MailState.TO_GO),
                Dates.time(target.madeAt, ZoneOffset.UTC),
                target.madeBy);
    }

    List<Delivery> of(List<WebhookDelivery> deliveries) {
        return WebhookAnswers.of(deliveries).stream().map(HookRows::row).toList();
    }

    private static Delivery row(WebhookAnswers.Delivery one) {
        return new Delivery(
                one.id(),
                one.event().word(),
                Dates.time(one.createdAt().toInstant(), ZoneOffset.UTC),
                one.state().word(),
                one.nextAttemptAt() == null
                        ? null
                        : Dates.time(one.nextAttemptAt().toInstant(), ZoneOffset.UTC),
                one.state() == MailState.GIVEN_UP,
                one.attempts().stream().map(HookRows::attempt).toList());
    }

    private static Try attempt(WebhookAnswers.Attempt one) {
        return new Try(
                Dates.time(one.at().toInstant(), ZoneOffset.UTC),
                one.status() == null ? "no answer" : one.status().toString(),
                one.millis(),
                one.error());
    }
}
