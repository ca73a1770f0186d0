package dev.lapwing.alerts.storage;

import dev.lapwing.alerts.domain.Appointment;
import dev.lapwing.alerts.domain.MailState;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** The mails that have waited for long. */
public final class StaleLine {
    private StaleLine() {}

    /** Returns the addresses to which mails from before a time still wait. */
    public static List<String> recipients(Instant before) {
        return OutboxMail.getEntityManager()
                .createQuery(
                        "select distinct m.recipient from OutboxMail m"
                                + " where m.state in :toGo and m.createdAt < :before order by m.recipient",
                        String.class)
                .setParameter("toGo", MailState.TO_GO)
                .setParameter("before", before)
                .getResultList();
    }

    /** Locks the waiting mails to an address from before a time, oldest first; what is being sent is left out. */
    public static List<OutboxMail> claim(String recipient, Instant before) {
        List<?> found = OutboxMail.getEntityManager()
                .createNativeQuery("""
                        select * from outbox_mail
                        where recipient = :recipient and state in ('WAITING', 'FAILED') and created_at < :before
                        order by created_at, id
                        for update skip locked
                        """, OutboxMail.class)
                .setParameter("recipient", recipient)
                .setParameter("before", before)
                .getResultList();
        return found.stream().map(OutboxMail.class::cast).toList();
    }

    /** Returns the mails that a digest stands for, oldest first. */
    public static List<OutboxMail> mergedInto(UUID digest) {
        return OutboxMail.list("mergedInto = ?1 order by createdAt, id", digest);
    }

    /** Returns whether an appointment of a task has reached an address. */
    public static boolean invited(UUID taskId, String recipient) {
        return OutboxMail.count(
                        "taskId = ?1 and recipient = ?2 and state = ?3 and calendarMethod = ?4",
                        taskId,
                        recipient,
                        MailState.SENT,
                        Appointment.Method.REQUEST)
                > 0;
    }
}
