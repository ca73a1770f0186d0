package dev.lapwing.alerts.mail;

import dev.lapwing.alerts.domain.Failure;
import jakarta.mail.MessagingException;
import java.util.Set;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;
import org.eclipse.angus.mail.smtp.SMTPSenderFailedException;

/** Tells apart, by the server's answer, what may work later from what never will (RFC 5321 section 4.2.1). */
final class SmtpFailures {
    /** The server wants a sign-in it did not get: the settings are at fault, not the mail (RFC 4954 section 6). */
    private static final Set<Integer> SIGN_IN_CODES = Set.of(530, 534, 535, 538);

    private static final int FIRST_PERMANENT = 500;

    private SmtpFailures() {}

    static MailNotSent ofServer(MessagingException e, MailSettings.Smtp settings) {
        return new MailNotSent(
                Failure.UNREACHABLE,
                "no connection to the mail server " + settings.host() + ":" + settings.port() + ": " + words(e),
                e);
    }

    static MailNotSent ofMail(MessagingException e) {
        int code = code(e);
        Failure failure = code >= FIRST_PERMANENT ? Failure.PERMANENT : Failure.PASSING;
        return new MailNotSent(SIGN_IN_CODES.contains(code) ? Failure.UNREACHABLE : failure, words(e), e);
    }

    /** Returns the answer that decided, or -1 when the connection ended without one. */
    private static int code(MessagingException e) {
        int code = -1;
        for (Exception link = e; link != null; link = next(link)) {
            if (link instanceof SMTPAddressFailedException address) {
                return address.getReturnCode();
            } else if (link instanceof SMTPSenderFailedException sender) {
                return sender.getReturnCode();
            } else if (link instanceof SMTPSendFailedException send) {
                code = send.getReturnCode();
            }
        }
        return code;
    }

    private static String words(MessagingException e) {
        var words = new StringBuilder();
        for (Exception link = e; link != null; link = next(link)) {
            String message = link.getMessage() == null
                    ? link.getClass().getSimpleName()
                    : link.getMessage().strip();
            if (words.indexOf(message) < 0) {
                words.append(words.isEmpty() ? "" : "; ").append(message);
            }
        }
        return words.toString();
    }

    private static Exception next(Exception link) {
        return link instanceof MessagingException messaging ? messaging.getNextException() : null;
    }
}
