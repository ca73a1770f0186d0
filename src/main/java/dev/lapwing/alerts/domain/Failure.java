package dev.lapwing.alerts.domain;

/** Why a mail did not go. */
public enum Failure {
    /** Nobody there to take mails at all: the mail is not to blame, and waits however long it lasts. */
    UNREACHABLE,
    /** This mail was not taken now, but may be later. */
    PASSING,
    /** This mail will never be taken as it is. */
    PERMANENT
}
