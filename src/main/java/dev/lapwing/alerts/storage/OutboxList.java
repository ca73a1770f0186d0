package dev.lapwing.alerts.storage;

import dev.lapwing.alerts.domain.MailState;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/** Reads the outbox, the newest mail first. */
public final class OutboxList {
    private static final Instant END_OF_TIME = Instant.parse("9999-12-31T00:00:00Z");

    private OutboxList() {}

    /** Returns a page of mails, after one of them if given; a null state means all. */
    public static List<OutboxMail> after(OutboxMail last, MailState state, int limit) {
        return OutboxMail.<OutboxMail>find(
                        "(?1 is null or state = ?1) and (createdAt < ?2 or createdAt = ?2 and id < ?3)"
                                + " order by createdAt desc, id desc",
                        state,
                        last == null ? END_OF_TIME : last.createdAt,
                        last == null ? new UUID(-1, -1) : last.id)
                .range(0, limit - 1)
                .list();
    }

    /** Returns how many mails are in a state; null counts all. */
    public static long countIn(MailState state) {
        return state == null ? OutboxMail.count() : OutboxMail.count("state", state);
    }

    /** Returns the Message-ID of the first mail to an address about a task. */
    public static Optional<String> firstAbout(UUID taskId, String recipient) {
        return OutboxMail.<OutboxMail>find("taskId = ?1 and recipient = ?2 order by createdAt, id", taskId, recipient)
                .firstResultOptional()
                .map(mail -> mail.messageId);
    }

    /** Returns the number of the last change to a task's appointment that was mailed, or -1 when there was none. */
    public static int lastCalendarSequence(UUID taskId) {
        return OutboxMail.getEntityManager()
                .createQuery("select max(m.calendarSequence) from OutboxMail m where m.taskId = :task", Integer.class)
                .setParameter("task", taskId)
                .getResultStream()
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(-1);
    }
}
