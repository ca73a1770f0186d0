package dev.lapwing.alerts.mail;

import dev.lapwing.alerts.domain.Failure;

/** A mail could not be handed over. The message is what the outbox shows. */
public final class MailNotSent extends Exception {
    private static final long serialVersionUID = 1L;
    private final Failure failure;

    MailNotSent(Failure failure, String message, Throwable cause) {
        super(message, cause);
        this.failure = failure;
    }

    public Failure failure() {
        return failure;
    }
}
