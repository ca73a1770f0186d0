package dev.lapwing.alerts.application;

import dev.lapwing.alerts.mail.MailSettings;
import dev.lapwing.alerts.mail.MailTransport;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.TransactionPhase;
import jakarta.inject.Inject;

/**
 * Has mails sent by threads of its own: at once when one was written, and every few seconds for those whose pause is
 * over or that an earlier run of the service left behind.
 *
 * <p>Each sender takes the most urgent mail that is due until none is left, so a server that stalls on one mail holds
 * up one sender only. When nobody takes mails at all the sender stops; the next tick tries again.
 */
@ApplicationScoped
class Dispatcher {
    private final SendingMail sending;
    private final MailTransport transport;
    private final SenderThreads threads;

    @Inject
    Dispatcher(SendingMail sending, MailTransport transport, MailSettings settings) {
        this.sending = sending;
        this.transport = transport;
        threads = new SenderThreads("mail-sender", settings.senders(), this::sendWhatIsDue);
    }

    void written(@Observes(during = TransactionPhase.AFTER_SUCCESS) MailWritten mail) {
        threads.wake();
    }

    @Scheduled(
            identity = "mail-dispatch",
            every = "{lapwing.mail.tick}",
            concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void tick() {
        threads.wake();
    }

    private void sendWhatIsDue() {
        try (var route = transport.route()) {
            OneAtATime.Outcome outcome;
            do {
                outcome = sending.next(route);
            } while (outcome == OneAtATime.Outcome.DEALT_WITH);
        }
    }

    void stopping(@Observes ShutdownEvent stop) throws InterruptedException {
        threads.stop();
    }
}
