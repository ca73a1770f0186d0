package dev.lapwing.alerts.mail;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;

/** Makes the one transport that the operator chose. */
@Singleton
class MailTransports {
    @Produces
    @Singleton
    MailTransport transport(MailSettings settings) {
        return switch (settings.transport()) {
            case FOLDER -> new FolderTransport(settings.folder());
            case SMTP -> new SmtpTransport(settings.smtp());
        };
    }
}
