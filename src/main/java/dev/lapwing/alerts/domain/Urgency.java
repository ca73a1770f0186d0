package dev.lapwing.alerts.domain;

/** How soon a mail has to go; of those that wait, the more urgent goes first. */
public enum Urgency {
    /** A roof may be letting water in. */
    AT_ONCE(0),
    /** Dated work. */
    SOON(10);

    private final int priority;

    Urgency(int priority) {
        this.priority = priority;
    }

    /** Returns the number by which mails are ordered; lower goes first. */
    public int priority() {
        return priority;
    }
}
