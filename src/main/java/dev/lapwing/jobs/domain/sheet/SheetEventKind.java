package dev.lapwing.jobs.domain.sheet;

import dev.lapwing.jobs.domain.Words;

/** What is done on a sheet beside noting findings. */
public enum SheetEventKind {
    /** A cleaner was picked that the surface bears. */
    CLEANER,
    /** The roof is too dirty to see. */
    TOO_DIRTY,
    /** The wash was finished. */
    WASHED,
    /** Nobody goes up: the roof is wet, or it is windy. */
    STOPPED,
    /** Looking and feeling began, on a roof that had its drying time. */
    BEGUN,
    /** Looking and feeling began before the drying time was over, for a stated reason. */
    BEGUN_EARLY,
    /** A sealant was picked that may go on this roof. */
    SEALANT,
    /** A chalking surface was treated, and a test held. */
    TREATED,
    /** A chalking surface was treated, and the test did not hold. */
    TREATED_IN_VAIN;

    /** Returns the word used in the HTTP contract, such as {@code too-dirty}. */
    public String word() {
        return Words.of(this);
    }

    /** Returns the name as it stands at the head of a line. */
    public String label() {
        return switch (this) {
            case CLEANER -> "Cleaner used";
            case TOO_DIRTY -> "Too dirty to see";
            case WASHED -> "Washed";
            case STOPPED -> "Stopped";
            case BEGUN -> "Inspection begun";
            case BEGUN_EARLY -> "Inspection begun early";
            case SEALANT -> "Sealant used";
            case TREATED -> "Surface treated, test held";
            case TREATED_IN_VAIN -> "Surface treated, test did not hold";
        };
    }
}
