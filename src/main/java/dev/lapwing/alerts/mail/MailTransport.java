package dev.lapwing.alerts.mail;

import jakarta.mail.internet.MimeMessage;

/** Takes finished mails on their way. */
public interface MailTransport {
    /** Returns a way for several mails, one after another. Nothing is connected before the first mail. */
    Route route();

    /** Carries mails of one sender thread. */
    interface Route extends AutoCloseable {
        /**
         * Hands a mail over. When it returns, the other side has taken responsibility for it.
         *
         * @param mail finished, with its Message-ID
         */
        void send(MimeMessage mail) throws MailNotSent;

        @Override
        void close();
    }
}
