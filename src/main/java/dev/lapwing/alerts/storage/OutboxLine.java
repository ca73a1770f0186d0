package dev.lapwing.alerts.storage;

import dev.lapwing.alerts.domain.MailState;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The mails that have to go, in the order in which they go. */
public final class OutboxLine {
    private OutboxLine() {}

    /** Returns the first mails whose time has come, the most urgent first, then by how long they have waited. */
    public static List<UUID> due(Instant now, int most) {
        return OutboxMail.getEntityManager()
                .createQuery(
                        "select m.id from OutboxMail m where m.state in :toGo and m.nextAttemptAt <= :now"
                                + " order by m.priority, m.nextAttemptAt, m.id",
                        UUID.class)
                .setParameter("toGo", MailState.TO_GO)
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

    /** Returns how many mails should have gone before an instant and have not. */
    public static long overdue(Instant since) {
        return OutboxMail.count("state in ?1 and createdAt < ?2", MailState.TO_GO, since);
    }
}
