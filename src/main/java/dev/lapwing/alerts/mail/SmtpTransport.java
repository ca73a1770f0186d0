package dev.lapwing.alerts.mail;

import dev.lapwing.alerts.domain.Failure;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.Transport;
import jakarta.mail.internet.MimeMessage;
import java.util.Properties;
import org.jboss.logging.Logger;

/** Hands mails to an SMTP server. A route keeps its connection from mail to mail until something goes wrong on it. */
final class SmtpTransport implements MailTransport {
    private static final Logger LOG = Logger.getLogger(SmtpTransport.class);
    /** Servers end connections that bring more than they like. */
    private static final int MAILS_PER_CONNECTION = 50;

    private final MailSettings.Smtp settings;
    private final Session session;

    SmtpTransport(MailSettings.Smtp settings) {
        this.settings = settings;
        session = Session.getInstance(properties(settings));
    }

    private static Properties properties(MailSettings.Smtp settings) {
        var properties = new Properties();
        properties.setProperty("mail.transport.protocol", "smtp");
        properties.setProperty(
                "mail.smtp.auth", String.valueOf(settings.username().isPresent()));
        String timeout = String.valueOf(settings.timeout().toMillis());
        for (String step : new String[] {"connectiontimeout", "timeout", "writetimeout"}) {
            properties.setProperty("mail.smtp." + step, timeout);
        }
        boolean starttls = settings.tls() == MailSettings.Tls.STARTTLS;
        properties.setProperty("mail.smtp.starttls.enable", String.valueOf(starttls));
        properties.setProperty("mail.smtp.starttls.required", String.valueOf(starttls));
        properties.setProperty("mail.smtp.ssl.enable", String.valueOf(settings.tls() == MailSettings.Tls.IMPLICIT));
        properties.setProperty("mail.smtp.ssl.checkserveridentity", "true");
        return properties;
    }

    @Override
    public Route route() {
        return new Connection();
    }

    private final class Connection implements Route {
        private Transport open;
        private int carried;

        @Override
        public void send(MimeMessage mail) throws MailNotSent {
            if (carried >= MAILS_PER_CONNECTION) {
                close();
            }
            boolean usedBefore = carried > 0;
            try {
                sendOver(mail);
            } catch (MailNotSent e) {
                close();
                if (!usedBefore || e.failure() == Failure.PERMANENT) {
                    throw e;
                }
                sendOver(mail);
            }
        }

        private void sendOver(MimeMessage mail) throws MailNotSent {
            if (open == null) {
                open = connect();
            }
            try {
                open.sendMessage(mail, mail.getAllRecipients());
                carried++;
            } catch (MessagingException e) {
                close();
                throw SmtpFailures.ofMail(e);
            }
        }

        private Transport connect() throws MailNotSent {
            try {
                Transport transport = session.getTransport();
                transport.connect(
                        settings.host(),
                        settings.port(),
                        settings.username().orElse(null),
                        settings.password().orElse(null));
                return transport;
            } catch (MessagingException e) {
                throw SmtpFailures.ofServer(e, settings);
            }
        }

        @Override
        public void close() {
            if (open != null) {
                try {
                    open.close();
                } catch (MessagingException e) {
                    LOG.debug("The mail server did not take leave", e);
                }
            }
            open = null;
            carried = 0;
        }
    }
}
