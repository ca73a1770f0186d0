package dev.lapwing.alerts.mail;

import dev.lapwing.alerts.domain.Appointment;
import dev.lapwing.alerts.domain.Failure;
import dev.lapwing.alerts.domain.HeaderWords;
import dev.lapwing.alerts.domain.PlainText;
import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.alerts.storage.OutboxMail;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Properties;

/**
 * Makes the message that travels from a mail of the outbox, the same each time it is asked for.
 *
 * <p>Headers are written by us and not by the mail library where the limits of RFC 5322 (lines) and RFC 2047 (encoded
 * words, counted with the header's name) ask for it. Bodies are quoted-printable, so their lines stay short whatever
 * people wrote.
 */
@ApplicationScoped
public class MailBuilder {
    private static final Session NO_SERVER = Session.getInstance(new Properties());
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE, d MMM yyyy HH:mm:ss Z", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private final MailSettings settings;

    @Inject
    MailBuilder(MailSettings settings) {
        this.settings = settings;
    }

    /** Returns the finished message; fails for good when the recipient's address is none. */
    public MimeMessage build(OutboxMail mail) throws MailNotSent {
        try {
            var message = new FixedIdMessage(mail.messageId);
            headers(message, mail);
            message.setContent(body(mail));
            message.saveChanges();
            return message;
        } catch (AddressException e) {
            throw new MailNotSent(Failure.PERMANENT, "the address is not valid: " + e.getMessage(), e);
        } catch (MessagingException e) {
            throw new MailNotSent(Failure.PERMANENT, "the mail cannot be written: " + e.getMessage(), e);
        }
    }

    /** Returns the domain in which our Message-IDs are unique: that of the sender. */
    public String domain() {
        String address = sender().getAddress();
        return address.substring(address.lastIndexOf('@') + 1);
    }

    /** Returns the sender as the organizer of appointments. */
    public Appointment.Person organizer() {
        InternetAddress from = sender();
        return new Appointment.Person(from.getPersonal() == null ? "Lapwing" : from.getPersonal(), from.getAddress());
    }

    private InternetAddress sender() {
        try {
            return Addresses.sender(settings.from());
        } catch (AddressException e) {
            throw new IllegalStateException("lapwing.mail.from was checked at start", e);
        }
    }

    private void headers(MimeMessage message, OutboxMail mail) throws MessagingException {
        InternetAddress from = sender();
        String name = from.getPersonal() == null ? "" : from.getPersonal();
        message.setHeader("Date", DATE.format(mail.createdAt));
        message.setHeader("From", HeaderWords.mailbox("From", name, from.getAddress()));
        message.setHeader("To", HeaderWords.mailbox("To", mail.recipientName, Addresses.bare(mail.recipient)));
        message.setHeader("Subject", HeaderWords.text("Subject", mail.subject));
        if (mail.inReplyTo != null) {
            message.setHeader("In-Reply-To", mail.inReplyTo);
            message.setHeader("References", mail.inReplyTo);
        }
        message.setHeader("Auto-Submitted", "auto-generated");
        if (mail.priority == Urgency.AT_ONCE.priority()) {
            message.setHeader("Importance", "high");
        }
    }

    private static MimeMultipart body(OutboxMail mail) throws MessagingException {
        var alternatives = new MimeMultipart("alternative");
        alternatives.addBodyPart(part(mail.textBody, "plain"));
        alternatives.addBodyPart(part(mail.htmlBody, "html"));
        if (mail.calendarPart != null) {
            alternatives.addBodyPart(calendar(mail));
        }
        return alternatives;
    }

    /** The parameter names the method again, so that mail programs see an invitation (RFC 6047 section 2.4). */
    private static MimeBodyPart calendar(OutboxMail mail) throws MessagingException {
        MimeBodyPart part = part(mail.calendarPart, "calendar");
        part.setHeader("Content-Type", "text/calendar; charset=UTF-8; method=" + mail.calendarMethod);
        return part;
    }

    private static MimeBodyPart part(String text, String subtype) throws MessagingException {
        var part = new MimeBodyPart();
        part.setText(PlainText.lines(text), "UTF-8", subtype);
        part.setHeader("Content-Transfer-Encoding", "quoted-printable");
        return part;
    }

    /** A message that keeps its Message-ID instead of making one. */
    private static final class FixedIdMessage extends MimeMessage {
        private final String id;

        FixedIdMessage(String id) {
            super(NO_SERVER);
            this.id = id;
        }

        @Override
        protected void updateMessageID() throws MessagingException {
            setHeader("Message-ID", id);
        }
    }
}
