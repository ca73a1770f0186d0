package dev.lapwing.alerts.application;

/** A mail was put into the outbox. Told inside the transaction, so that it is acted on after it. */
record MailWritten() {}
