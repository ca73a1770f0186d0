package dev.lapwing.alerts.storage;

import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.domain.Urgency;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The mails that have to go, in the order in which they go. */
public final class OutboxLine {
    private static final Duration HOUR = Duration.ofHours(1);

    /** What is urgent always goes; other mail to a person who had enough within the hour waits. */
    private static final String TO_GO = """
             m.state in :toGo
             and (m.priority = :atOnce
                  or (select count(s) from OutboxMail s
                      where s.recipient = m.recipient and s.sentAt > :hourAgo) < :hourly)
            """;

    private OutboxLine() {}

    /**
     * Returns the first mails whose time has come, the most urgent first, then by how long they have waited.
     *
     * @param hourly how many mails a person gets within an hour, what is urgent aside
     */
    public static List<UUID> due(Instant now, int hourly, int most) {
        return OutboxMail.getEntityManager()
                .createQuery(
                        "select m.id from OutboxMail m where" + TO_GO
                                + " and m.nextAttemptAt <= :now order by m.priority, m.nextAttemptAt, m.id",
                        UUID.class)
                .setParameter("toGo", MailState.TO_GO)
                .setParameter("atOnce", Urgency.AT_ONCE.priority())
                .setParameter("hourAgo", now.minus(HOUR))
                .setParameter("hourly", (long) hourly)
                .setParameter("now", now)
                .setMaxResults(most)
                .getResultList();
    }

    /**
     * Locks a mail until the transaction ends.
     *
     * @return the mail, or empty when another sender has it or it has gone meanwhile
     */
    public static Optional<OutboxMail> claim(UUID id, Instant now) {
        List<?> found = OutboxMail.getEntityManager()
                .createNativeQuery("""
                        select * from outbox_mail
                        where id = :id and state in ('WAITING', 'FAILED') and next_attempt_at <= :now
                        for update skip locked
                        """, OutboxMail.class)
                .setParameter("id", id)
                .setParameter("now", now)
                .getResultList();
        return found.stream().map(OutboxMail.class::cast).findFirst();
    }

    /** Returns how many mails could have gone, have waited longer than that and have not gone. */
    public static long overdue(Instant now, int hourly, Duration longestWait) {
        return OutboxMail.getEntityManager()
                .createQuery(
                        "select count(m) from OutboxMail m where" + TO_GO + " and m.createdAt < :since", Long.class)
                .setParameter("toGo", MailState.TO_GO)
                .setParameter("atOnce", Urgency.AT_ONCE.priority())
                .setParameter("hourAgo", now.minus(HOUR))
                .setParameter("hourly", (long) hourly)
                .setParameter("since", now.minus(longestWait))
                .getSingleResult();
    }
}
