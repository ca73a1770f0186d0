package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.Appointment;
import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.alerts.mail.MailSettings;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.alerts.storage.StaleLine;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.people.Staff;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * Sees to mails that wait for long because no server takes any, so that nobody is flooded once one does.
 *
 * <p>What tells of a strike goes as long as the strike is open, only the newest of several calls for help; once the
 * strike is over it is dropped. Of the rest one digest is made for each person. Only the withdrawal of an appointment
 * that the person has in their calendar goes by itself: a digest cannot withdraw it.
 */
@ApplicationScoped
class StaleMails {
    @Inject
    Outbox outbox;

    @Inject
    DigestLetters letters;

    @Inject
    MailSettings settings;

    @Inject
    Clock clock;

    @Scheduled(
            identity = "stale-mails",
            every = "1m",
            delayed = "30s",
            concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void tick() {
        run(clock.instant());
    }

    /** Sees to the mails that are stale at a time. */
    void run(Instant now) {
        Instant before = now.minus(settings.staleAfter());
        List<String> recipients = QuarkusTransaction.requiringNew().call(() -> StaleLine.recipients(before));
        for (String recipient : recipients) {
            QuarkusTransaction.requiringNew().run(() -> tidy(recipient, before));
        }
    }

    private void tidy(String recipient, Instant before) {
        List<OutboxMail> stale = StaleLine.claim(recipient, before);
        Set<UUID> called = new HashSet<>();
        List<OutboxMail> rest = new ArrayList<>();
        for (int i = stale.size() - 1; i >= 0; i--) {
            OutboxMail mail = stale.get(i);
            if (tellsOfStrike(mail)) {
                dropIfOver(mail, called);
            } else if (!withdraws(mail)) {
                rest.add(0, mail);
            }
        }
        if (rest.size() > 1) {
            merge(rest);
        }
    }

    private static boolean tellsOfStrike(OutboxMail mail) {
        return mail.taskId != null && mail.priority == Urgency.AT_ONCE.priority();
    }

    private static boolean withdraws(OutboxMail mail) {
        return mail.calendarMethod == Appointment.Method.CANCEL && StaleLine.invited(mail.taskId, mail.recipient);
    }

    private static void dropIfOver(OutboxMail mail, Set<UUID> called) {
        CareTask task = CareTask.findById(mail.taskId);
        if (!task.state.open()) {
            mail.dropped("not sent: the work was " + task.state.word() + " before the mail could go");
        } else if (mail.kind == MailKind.ESCALATION && !called.add(mail.taskId)) {
            mail.dropped("not sent: a later mail calls for the same work");
        }
    }

    private void merge(List<OutboxMail> mails) {
        List<OutboxMail> all = mails.stream()
                .flatMap(mail ->
                        mail.kind == MailKind.OUTAGE_DIGEST ? StaleLine.mergedInto(mail.id).stream() : Stream.of(mail))
                .sorted(Comparator.comparing((OutboxMail mail) -> mail.createdAt))
                .toList();
        OutboxMail any = mails.get(0);
        Optional<Staff> person =
                Staff.find("mail = ?1 and active = true", any.recipient).firstResultOptional();
        Reader reader = person.map(Reader::of).orElse(new Reader(any.recipientName, any.recipient, "en"));
        boolean today = mails.stream().allMatch(mail -> mail.priority == Urgency.TODAY.priority());
        Letter letter = letters.outage(reader, person.map(staff -> staff.role).orElse(null), all);
        OutboxMail digest = outbox.add(reader, MailKind.OUTAGE_DIGEST, today ? Urgency.TODAY : Urgency.SOON, letter);
        mails.forEach(mail -> mail.merged(digest.id));
        all.forEach(mail -> mail.merged(digest.id));
    }
}
