package dev.lapwing.jobs.domain.verdict;

import dev.lapwing.jobs.domain.Words;

/** How soon follow-up work is wanted, from none to at once. */
public enum Urgency {
    NONE,
    /** Within the routine days of the settings. */
    ROUTINE,
    /** Before the next rain and before the unit goes out, and in any case within the urgent hours of the settings. */
    URGENT,
    /** Now; the unit does not move until it is done. */
    AT_ONCE;

    /** Returns the word used in the HTTP contract, such as {@code at-once}. */
    public String word() {
        return Words.of(this);
    }

    Urgency sooner(Urgency other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
