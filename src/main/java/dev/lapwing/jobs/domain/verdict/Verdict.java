package dev.lapwing.jobs.domain.verdict;

import dev.lapwing.jobs.domain.Words;

/** What findings lead to, from mild to severe; the order of the values is the order of severity. */
public enum Verdict {
    /** The roof keeps water out as it is. */
    FIT,
    /** Sealant is added at a place. */
    TOUCH_UP,
    /** New sealant over the old along a run, or a repair of the membrane. */
    REWORK,
    /** The old sealant comes off and is replaced. */
    REPLACE,
    /** Not for this yard: hand over to a qualified workshop. */
    STOP_AND_REFER;

    /** Returns the word used in the HTTP contract, such as {@code stop-and-refer}. */
    public String word() {
        return Words.of(this);
    }

    Verdict worse(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
