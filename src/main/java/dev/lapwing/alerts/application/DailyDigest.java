package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.alerts.storage.DigestDays;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.DueList;
import dev.lapwing.fleet.Depot;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * Tells each tech and coordinator in the morning of their depot what is to be done there; nobody is written to when
 * nothing is.
 *
 * <p>Looks every few minutes which depots have passed the hour, so a restart, a change of the clocks or a second node
 * neither skips a day nor doubles it.
 */
@ApplicationScoped
class DailyDigest {
    private static final Logger LOG = Logger.getLogger(DailyDigest.class);
    /** More than this is no list to work from; the mail says how many there are. */
    private static final int MOST_TASKS = 500;

    @ConfigProperty(name = "lapwing.digest.at", defaultValue = "06:30")
    LocalTime at;

    @Inject
    Outbox outbox;

    @Inject
    DigestLetters letters;

    @Inject
    WeekAhead week;

    @Inject
    Clock clock;

    @Scheduled(
            identity = "daily-digest",
            every = "${lapwing.digest.look:5m}",
            delayed = "10s",
            concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void tick() {
        run(clock.instant());
    }

    /** Writes the digests of every depot where it is morning and they were not written yet. */
    void run(Instant now) {
        List<Depot> depots = QuarkusTransaction.requiringNew().call(Depot::byName);
        for (Depot depot : depots) {
            if (now.atZone(depot.zoneId()).toLocalTime().isBefore(at)) {
                continue;
            }
            try {
                QuarkusTransaction.requiringNew().run(() -> write(depot, now));
                QuarkusTransaction.requiringNew().run(() -> week.write(depot, now));
            } catch (RuntimeException e) {
                LOG.errorf(e, "The digests of %s were not written; the next tick tries again", depot.name);
            }
        }
    }

    private void write(Depot depot, Instant now) {
        LocalDate today = depot.dateAt(now);
        if (!DigestDays.claim(depot.code, today, now)) {
            return;
        }
        for (Role role : List.of(Role.TECH, Role.COORDINATOR)) {
            for (Staff reader : Staff.at(depot.code, role)) {
                List<CareTask> tasks = tasks(depot, role == Role.TECH ? reader.username : null, now);
                if (!tasks.isEmpty()) {
                    Letter letter = letters.daily(reader, depot, tasks, now);
                    outbox.add(Reader.of(reader), MailKind.DAILY_DIGEST, Urgency.TODAY, letter);
                }
            }
        }
    }

    private static List<CareTask> tasks(Depot depot, String assignee, Instant now) {
        var filter = new DueList.Filter(depot.code, null, null, null, assignee, null);
        return DueList.after(filter, DueList.Place.START, MOST_TASKS).stream()
                .filter(task -> DigestLetters.wanted(task, now))
                .toList();
    }
}
