package dev.lapwing.alerts.web;

import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.storage.OutboxMail;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;

/**
 * A mail as it is answered; times are in UTC.
 *
 * @param nextAttemptAt when it is tried next, or null when it is not
 * @param task the task it tells of, or null
 */
record OutboxItem(
        UUID id,
        String messageId,
        MailKind kind,
        String to,
        String subject,
        MailState state,
        int attempts,
        String lastError,
        OffsetDateTime createdAt,
        OffsetDateTime sentAt,
        OffsetDateTime nextAttemptAt,
        UUID task) {

    static OutboxItem of(OutboxMail mail) {
        return new OutboxItem(
                mail.id,
                mail.messageId,
                mail.kind,
                mail.recipient,
                mail.subject,
                mail.state,
                mail.attempts,
                mail.lastError,
                utc(mail.createdAt),
                utc(mail.sentAt),
                MailState.TO_GO.contains(mail.state) ? utc(mail.nextAttemptAt) : null,
                mail.taskId);
    }

    private static OffsetDateTime utc(Instant instant) {
        return instant == null ? null : instant.atOffset(ZoneOffset.UTC);
    }
}
