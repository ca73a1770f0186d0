package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.domain.PlainText;
import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.alerts.mail.MailBuilder;
import dev.lapwing.alerts.storage.OutboxList;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.platform.Ids;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.UUID;

/** Takes mails in, inside the transaction of what they tell of. */
@ApplicationScoped
public class Outbox {
    private static final int LONGEST_SUBJECT = 200;
    private static final int LONGEST_NAME = 100;

    @CheckedTemplate(basePath = "alerts")
    static class Templates {
        static native TemplateInstance letterText(Letter letter);

        static native TemplateInstance letterHtml(Letter letter);
    }

    @Inject
    Event<MailWritten> written;

    @Inject
    MailBuilder builder;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Adds a mail about a task and returns it. It goes once the transaction has ended well. */
    @Transactional(Transactional.TxType.MANDATORY)
    OutboxMail add(Reader reader, MailKind kind, Urgency urgency, CareTask task, Letter letter) {
        OutboxMail mail = add(reader, kind, urgency, letter);
        mail.inReplyTo = OutboxList.firstAbout(task.id, reader.mail()).orElse(null);
        mail.taskId = task.id;
        return mail;
    }

    /** Adds a mail about no task in particular. */
    @Transactional(Transactional.TxType.MANDATORY)
    OutboxMail add(Reader reader, MailKind kind, Urgency urgency, Letter letter) {
        Instant now = clock.instant();
        var mail = new OutboxMail();
        mail.id = ids.next();
        mail.messageId = "<" + mail.id + "@" + builder.domain() + ">";
        mail.kind = kind;
        mail.priority = urgency.priority();
        mail.recipientName = PlainText.oneLine(reader.name(), LONGEST_NAME);
        mail.recipient = reader.mail();
        mail.subject = PlainText.oneLine(letter.subject(), LONGEST_SUBJECT);
        mail.textBody = Templates.letterText(letter).render();
        mail.htmlBody = Templates.letterHtml(letter).render();
        mail.state = MailState.WAITING;
        mail.createdAt = now;
        mail.nextAttemptAt = now;
        mail.persist();
        written.fire(new MailWritten());
        return mail;
    }

    /** Puts a mail that was given up back in line. */
    @Transactional
    public OutboxMail sendAgain(UUID id) {
        OutboxMail mail = OutboxMail.require(id);
        mail.sendAgain(clock.instant());
        written.fire(new MailWritten());
        return mail;
    }
}
