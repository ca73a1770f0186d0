package dev.lapwing.alerts.application;

import dev.lapwing.alerts.application.OneAtATime.Outcome;
import dev.lapwing.alerts.domain.Failure;
import dev.lapwing.alerts.domain.RetryRule;
import dev.lapwing.alerts.mail.MailBuilder;
import dev.lapwing.alerts.mail.MailNotSent;
import dev.lapwing.alerts.mail.MailSettings;
import dev.lapwing.alerts.mail.MailTransport;
import dev.lapwing.alerts.storage.OutboxLine;
import dev.lapwing.alerts.storage.OutboxMail;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.UUID;
import org.jboss.logging.Logger;

/** Sends mails of the outbox. What the service dies over is sent again under the same Message-ID. */
@ApplicationScoped
class SendingMail {
    private static final Logger LOG = Logger.getLogger(SendingMail.class);
    /** A server may use its time limit up at every step of one mail. */
    private static final int STEPS_OF_A_MAIL = 12;

    @Inject
    MailBuilder builder;

    @Inject
    MailSettings settings;

    @Inject
    Chance chance;

    @Inject
    Clock clock;

    /** Sends the most urgent mail that is due and that nobody else is sending. */
    Outcome next(MailTransport.Route route) {
        int seconds = Math.toIntExact(settings.smtp().timeout().toSeconds() + 1) * STEPS_OF_A_MAIL;
        return OneAtATime.next(
                () -> OutboxLine.due(clock.instant(), settings.hourly(), OneAtATime.LOOKED_AT),
                seconds,
                id -> claimAndSend(id, route));
    }

    private Outcome claimAndSend(UUID id, MailTransport.Route route) {
        return OutboxLine.claim(id, clock.instant())
                .map(mail -> send(mail, route))
                .orElse(Outcome.TAKEN_BY_ANOTHER);
    }

    private Outcome send(OutboxMail mail, MailTransport.Route route) {
        try {
            route.send(builder.build(mail));
            mail.sent(clock.instant());
            return Outcome.DEALT_WITH;
        } catch (MailNotSent e) {
            return failed(mail, e.failure(), e.getMessage());
        } catch (RuntimeException e) {
            LOG.errorf(e, "Mail %s could not be handled", mail.id);
            return failed(mail, Failure.PASSING, "unexpected: " + e);
        }
    }

    private Outcome failed(OutboxMail mail, Failure failure, String why) {
        var rule = new RetryRule(
                settings.firstPause(), settings.longestPause(), settings.outagePause(), settings.attempts());
        mail.failed(failure, why, rule, chance.next(), clock.instant());
        LOG.warnf(
                "Mail %s to %s is %s after %d attempts: %s",
                mail.id, mail.recipient, mail.state.word(), mail.attempts, mail.lastError);
        return failure == Failure.UNREACHABLE ? Outcome.NOBODY_THERE : Outcome.DEALT_WITH;
    }
}
