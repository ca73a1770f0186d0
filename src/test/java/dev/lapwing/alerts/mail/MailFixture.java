package dev.lapwing.alerts.mail;

import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.alerts.storage.OutboxMail;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** Settings and mails for tests. */
public final class MailFixture {
    private MailFixture() {}

    record Server(
            String host,
            int port,
            Optional<String> username,
            Optional<String> password,
            MailSettings.Tls tls,
            Duration timeout)
            implements MailSettings.Smtp {}

    record Settings(
            MailSettings.Transport transport,
            Path folder,
            String from,
            MailSettings.Smtp smtp,
            Duration firstPause,
            Duration longestPause,
            Duration outagePause,
            int attempts,
            Duration tick,
            int senders,
            int hourly,
            Duration longestWait,
            Duration staleAfter)
            implements MailSettings {}

    static Server server(int port) {
        return new Server(
                "127.0.0.1", port, Optional.empty(), Optional.empty(), MailSettings.Tls.NONE, Duration.ofSeconds(2));
    }

    static Settings settings(String from) {
        return new Settings(
                MailSettings.Transport.SMTP,
                Path.of("target/mail"),
                from,
                server(25),
                Duration.ofSeconds(5),
                Duration.ofMinutes(30),
                Duration.ofMinutes(1),
                20,
                Duration.ofSeconds(3),
                4,
                30,
                Duration.ofMinutes(15),
                Duration.ofHours(12));
    }

    public static MailBuilder builder() {
        return new MailBuilder(settings("Lapwing <lapwing@haldenridge.example>"));
    }

    /** A mail to Tess with everything plain. */
    public static OutboxMail anyMail() {
        var mail = new OutboxMail();
        mail.id = UUID.randomUUID();
        mail.messageId = "<" + mail.id + "@haldenridge.example>";
        mail.kind = MailKind.STRIKE;
        mail.priority = Urgency.AT_ONCE.priority();
        mail.recipientName = "Tess Alder";
        mail.recipient = "tess@haldenridge.example";
        mail.subject = "Unit H-104: inspect the struck roof now, before the next rain";
        mail.textBody = "The roof was struck.\n";
        mail.htmlBody = "<p>The roof was struck.</p>\n";
        mail.state = MailState.WAITING;
        mail.createdAt = Instant.parse("2026-05-03T14:05:00Z");
        mail.nextAttemptAt = mail.createdAt;
        return mail;
    }
}
