package dev.lapwing.alerts.application;

import dev.lapwing.alerts.mail.MailSettings;
import dev.lapwing.alerts.mail.MailTransport;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.scheduler.Scheduled;
import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.TransactionPhase;
import jakarta.inject.Inject;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;

/**
 * Has mails sent by threads of its own: at once when one was written, and every few seconds for those whose pause is
 * over or that an earlier run of the service left behind.
 *
 * <p>Each sender takes the most urgent mail that is due until none is left, so a server that stalls on one mail holds
 * up one sender only. When nobody takes mails at all the sender stops; the next tick tries again.
 */
@ApplicationScoped
class Dispatcher {
    private static final Logger LOG = Logger.getLogger(Dispatcher.class);
    private static final int SECONDS_TO_FINISH = 5;

    private final SendingMail sending;
    private final MailTransport transport;
    private final int senders;
    private ExecutorService threads;
    /** Places for senders that wait for a thread. */
    private Semaphore places;

    @Inject
    Dispatcher(SendingMail sending, MailTransport transport, MailSettings settings) {
        this.sending = sending;
        this.transport = transport;
        senders = settings.senders();
    }

    @PostConstruct
    void prepare() {
        threads = Executors.newFixedThreadPool(senders, work -> new Thread(work, "mail-sender"));
        places = new Semaphore(2 * senders);
    }

    void written(@Observes(during = TransactionPhase.AFTER_SUCCESS) MailWritten mail) {
        wake();
    }

    @Scheduled(
            identity = "mail-dispatch",
            every = "{lapwing.mail.tick}",
            concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void tick() {
        wake();
    }

    /** Asks for a sender. One that waits for a thread will see whatever is in the outbox by then, so few need to wait. */
    private void wake() {
        if (!threads.isShutdown() && places.tryAcquire()) {
            threads.execute(this::sendWhatIsDue);
        }
    }

    private void sendWhatIsDue() {
        places.release();
        try (var route = transport.route()) {
            SendingMail.Outcome outcome;
            do {
                outcome = sending.next(route);
            } while (outcome == SendingMail.Outcome.DEALT_WITH);
        } catch (RuntimeException e) {
            LOG.error("Sending stopped; the next tick tries again", e);
        }
    }

    void stopping(@Observes ShutdownEvent stop) throws InterruptedException {
        threads.shutdown();
        if (!threads.awaitTermination(SECONDS_TO_FINISH, TimeUnit.SECONDS)) {
            threads.shutdownNow();
        }
    }
}
