package dev.lapwing.alerts.hooks;

import dev.lapwing.alerts.domain.HookAddress;
import dev.lapwing.fleet.Depot;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Secrets;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** Adds, tries, pauses and removes targets. */
@ApplicationScoped
class Webhooks {
    @Inject
    WritingHooks writing;

    @Inject
    HookClient client;

    @Inject
    Event<HookWritten> written;

    @Inject
    Secrets secrets;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /**
     * Adds a target; its secret is in the answer.
     *
     * @param events words of what it is told of; null or empty means all
     * @param depot code of the depot it is told of, or null for all
     */
    @Transactional
    WebhookTarget add(String address, Collection<String> events, String depot, String by) {
        var errors = new FieldErrors();
        if (errors.present(address, "address")) {
            HookAddress.malformed(address.strip())
                    .or(() -> client.forbidden(address.strip()))
                    .ifPresent(why -> errors.check(false, "address", why));
        }
        Set<HookKind> kinds = kinds(events, errors);
        errors.check(depot == null || Depot.findById(depot) != null, "depot", "is not the code of a depot");
        errors.refuseIfAny();
        var target = new WebhookTarget();
        target.id = ids.next();
        target.address = address.strip();
        target.depotCode = depot;
        target.kinds(kinds);
        target.secret = secrets.newToken();
        target.madeAt = clock.instant();
        target.madeBy = by;
        target.persist();
        var pace = new WebhookPace();
        pace.targetId = target.id;
        pace.restsUntil = target.madeAt;
        pace.persist();
        return target;
    }

    private static Set<HookKind> kinds(Collection<String> words, FieldErrors errors) {
        Set<HookKind> kinds = EnumSet.noneOf(HookKind.class);
        for (String word : words == null ? List.<String>of() : words) {
            errors.word(HookKind.class, word, "events").ifPresent(kinds::add);
        }
        errors.check(!kinds.contains(HookKind.TEST), "events", "test is no event to choose");
        return kinds.isEmpty() ? HookKind.TO_CHOOSE : kinds;
    }

    /** Sends a target something to see whether it works, at once even while it rests. */
    @Transactional
    WebhookDelivery test(UUID id, String by) {
        WebhookTarget target = WebhookTarget.require(id);
        if (target.paused) {
            throw Refused.conflict("The webhook is paused; resume it first");
        }
        endRest(id);
        return writing.test(target, by);
    }

    @Transactional
    WebhookTarget pause(UUID id) {
        WebhookTarget target = WebhookTarget.require(id);
        target.paused = true;
        return target;
    }

    /** Lets deliveries go again, those that waited meanwhile too. */
    @Transactional
    WebhookTarget resume(UUID id) {
        WebhookTarget target = WebhookTarget.require(id);
        target.paused = false;
        endRest(id);
        written.fire(new HookWritten());
        return target;
    }

    /** Ends a target; what waits for it is not sent. */
    @Transactional
    void remove(UUID id) {
        WebhookTarget target = WebhookTarget.require(id);
        target.removedAt = clock.instant();
        target.secret = "";
    }

    /** Puts a delivery that was given up back in line. */
    @Transactional
    WebhookDelivery sendAgain(UUID targetId, UUID id) {
        WebhookTarget.require(targetId);
        WebhookDelivery delivery = WebhookDelivery.require(targetId, id);
        delivery.sendAgain(clock.instant());
        endRest(targetId);
        written.fire(new HookWritten());
        return delivery;
    }

    /** Leaves it to the sender that is at it just now, if any. */
    private void endRest(UUID targetId) {
        Instant now = clock.instant();
        WebhookPace.claim(targetId).ifPresent(pace -> pace.restsUntil = now);
    }
}
