package dev.lapwing.alerts.storage;

import dev.lapwing.alerts.domain.Appointment;
import dev.lapwing.alerts.domain.Failure;
import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.domain.PlainText;
import dev.lapwing.alerts.domain.RetryRule;
import dev.lapwing.platform.Refused;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import java.util.regex.Pattern;

/** One mail to one person, written in the transaction of what it tells of and sent after it. */
@Entity
@Table(name = "outbox_mail")
public class OutboxMail extends PanacheEntityBase {
    private static final int LONGEST_ERROR = 2000;
    private static final Pattern SECRET = Pattern.compile("/job/[A-Za-z0-9_-]{20,}");
    private static final String FORGOTTEN = "/job/sent";

    @Id
    public UUID id;

    /** The same in every attempt, so that a mail program shows a mail that came twice once. */
    @Column(name = "message_id")
    public String messageId;

    /** Message-ID of the first mail to this person about the same task, or null. */
    @Column(name = "in_reply_to")
    public String inReplyTo;

    @Enumerated(EnumType.STRING)
    public MailKind kind;

    public int priority;

    @Column(name = "recipient_name")
    public String recipientName;

    public String recipient;
    public String subject;

    @Column(name = "text_body")
    public String textBody;

    @Column(name = "html_body")
    public String htmlBody;

    /** The calendar object it carries, or null. */
    @Column(name = "calendar_part")
    public String calendarPart;

    @Enumerated(EnumType.STRING)
    @Column(name = "calendar_method")
    public Appointment.Method calendarMethod;

    @Column(name = "calendar_sequence")
    public Integer calendarSequence;

    /** The task it tells of, or null. */
    @Column(name = "task_id")
    public UUID taskId;

    @Enumerated(EnumType.STRING)
    public MailState state;

    public int attempts;

    /** How often it was not taken although the server was there. */
    public int refusals;

    @Column(name = "next_attempt_at")
    public Instant nextAttemptAt;

    @Column(name = "last_error")
    public String lastError;

    @Column(name = "created_at")
    public Instant createdAt;

    @Column(name = "sent_at")
    public Instant sentAt;

    /** The digest that says what this mail said, or null. */
    @Column(name = "merged_into")
    public UUID mergedInto;

    /** Returns the mail or refuses with "not found". */
    public static OutboxMail require(UUID id) {
        OutboxMail mail = findById(id);
        if (mail == null) {
            throw Refused.notFound("mail " + id);
        }
        return mail;
    }

    /** Notes that the mail has gone. The secret part of a link that it carried is then with its reader alone. */
    public void sent(Instant now) {
        textBody = SECRET.matcher(textBody).replaceAll(FORGOTTEN);
        htmlBody = SECRET.matcher(htmlBody).replaceAll(FORGOTTEN);
        attempts++;
        state = MailState.SENT;
        sentAt = now;
        lastError = null;
    }

    /** Notes that the mail has not gone, and when to try again, if ever. */
    public void failed(Failure failure, String why, RetryRule rule, double chance, Instant now) {
        attempts++;
        refusals += failure == Failure.UNREACHABLE ? 0 : 1;
        lastError = PlainText.oneLine(why, LONGEST_ERROR);
        state = rule.givesUp(failure, refusals) ? MailState.GIVEN_UP : MailState.FAILED;
        nextAttemptAt = now.plus(rule.pause(failure, attempts, chance));
    }

    /** Notes that a digest says what this mail said, so that it need not go. */
    public void merged(UUID digest) {
        state = MailState.MERGED;
        mergedInto = digest;
    }

    /** Notes that the mail need not go, and why. */
    public void dropped(String why) {
        state = MailState.DROPPED;
        lastError = PlainText.oneLine(why, LONGEST_ERROR);
    }

    /** Puts a mail that was given up back in line. */
    public void sendAgain(Instant now) {
        if (state != MailState.GIVEN_UP) {
            throw Refused.conflict("The mail is " + state.word() + "; only a mail that was given up is sent again");
        }
        state = MailState.WAITING;
        attempts = 0;
        refusals = 0;
        nextAttemptAt = now;
    }
}
