package dev.lapwing.alerts.mail;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.mail.internet.AddressException;
import java.nio.file.Files;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Refuses to start with mail settings that cannot work, and says all that is wrong with them. */
@ApplicationScoped
class MailSettingsCheck {
    private static final int HIGHEST_PORT = 65_535;
    private static final int MOST_SENDERS = 10;

    @Inject
    MailSettings settings;

    void starting(@Observes StartupEvent start) {
        List<String> wrong = problems(settings);
        if (!wrong.isEmpty()) {
            throw new IllegalStateException("Mail cannot be sent with these settings: " + String.join("; ", wrong));
        }
    }

    static List<String> problems(MailSettings settings) {
        List<String> wrong = new ArrayList<>();
        try {
            Addresses.sender(settings.from());
        } catch (AddressException e) {
            wrong.add("lapwing.mail.from is not a mail address: " + e.getMessage());
        }
        check(settings.attempts() >= 1, "lapwing.mail.attempts must be at least 1", wrong);
        check(settings.hourly() >= 1, "lapwing.mail.hourly must be at least 1", wrong);
        check(
                settings.senders() >= 1 && settings.senders() <= MOST_SENDERS,
                "lapwing.mail.senders must be from 1 to " + MOST_SENDERS,
                wrong);
        positive(settings.firstPause(), "lapwing.mail.first-pause", wrong);
        positive(settings.outagePause(), "lapwing.mail.outage-pause", wrong);
        positive(settings.longestWait(), "lapwing.mail.longest-wait", wrong);
        positive(settings.staleAfter(), "lapwing.mail.stale-after", wrong);
        check(
                settings.longestPause().compareTo(settings.firstPause()) >= 0,
                "lapwing.mail.longest-pause must not be shorter than lapwing.mail.first-pause",
                wrong);
        if (settings.transport() == MailSettings.Transport.SMTP) {
            server(settings.smtp(), wrong);
        } else {
            check(
                    !Files.exists(settings.folder()) || Files.isDirectory(settings.folder()),
                    "lapwing.mail.folder is a file, not a folder: " + settings.folder(),
                    wrong);
        }
        return wrong;
    }

    private static void server(MailSettings.Smtp smtp, List<String> wrong) {
        check(!smtp.host().isBlank(), "lapwing.mail.smtp.host is missing", wrong);
        check(
                smtp.port() >= 1 && smtp.port() <= HIGHEST_PORT,
                "lapwing.mail.smtp.port must be from 1 to " + HIGHEST_PORT,
                wrong);
        positive(smtp.timeout(), "lapwing.mail.smtp.timeout", wrong);
        check(
                smtp.username().isPresent() == smtp.password().isPresent(),
                "lapwing.mail.smtp.username and lapwing.mail.smtp.password go together: set both or none",
                wrong);
    }

    private static void positive(Duration duration, String name, List<String> wrong) {
        check(!duration.isNegative() && !duration.isZero(), name + " must be longer than nothing", wrong);
    }

    private static void check(boolean holds, String message, List<String> wrong) {
        if (!holds) {
            wrong.add(message);
        }
    }
}
