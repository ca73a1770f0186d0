package dev.lapwing.alerts.domain;

/** How soon a mail has to go; of those that wait, the more urgent goes first. */
public enum Urgency {
    /** A roof may be letting water in. */
    AT_ONCE(0),
    /** Dated work. */
    SOON(10),
    /** A summary of what other mails and pages say too. */
    TODAY(20);

    private final int priority;

    Urgency(int priority) {
        this.priority = priority;
    }

    /** Returns the number by which mails are ordered; lower goes first. */
    public int priority() {
        return priority;
    }
}
