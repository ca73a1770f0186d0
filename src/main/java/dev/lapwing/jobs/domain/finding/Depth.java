package dev.lapwing.jobs.domain.finding;

import dev.lapwing.jobs.domain.Words;

/** How far down a crack goes. */
public enum Depth {
    /** Only in the crust of the sealant. */
    SURFACE,
    /** Through the crust into the body of the sealant. */
    DEEP;

    /** Returns the word used in the HTTP contract. */
    public String word() {
        return Words.of(this);
    }
}
