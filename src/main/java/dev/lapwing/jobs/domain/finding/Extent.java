package dev.lapwing.jobs.domain.finding;

import dev.lapwing.jobs.domain.Words;

/** How much of it there is: the first three for what is held by sealant or screws, the last two for the rest. */
public enum Extent {
    HOLDS,
    LOOSE_HERE,
    LOOSE_IN_SEVERAL,
    ONE,
    SEVERAL;

    /** Returns the word used in the HTTP contract, such as {@code loose-here}. */
    public String word() {
        return Words.of(this);
    }
}
