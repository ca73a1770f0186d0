package dev.lapwing.jobs.domain.verdict;

import dev.lapwing.jobs.domain.Words;

/** Work that follows from findings. The three kinds of sealant work are in the order in which one covers the other. */
public enum Work {
    /** Ask the dealer or maker which membrane system the roof has. */
    CONFIRM_MEMBRANE,
    /** Treat a chalking surface and test that sealant holds on it. */
    SURFACE_TREATMENT,
    TOUCH_UP,
    REWORK,
    SEALANT_REPLACEMENT,
    MEMBRANE_REPAIR,
    /** Fasten and seal what is mounted on the roof. */
    ATTACHMENT_REPAIR,
    /** Hand the unit over to a qualified workshop. */
    WORKSHOP_REFERRAL;

    /** Returns the word used in the HTTP contract, such as {@code membrane-repair}. */
    public String word() {
        return Words.of(this);
    }

    /** Returns whether sealant is put on the roof, so that its system must be known and its surface sound. */
    public boolean needsSealant() {
        return isSealantRun() || this == MEMBRANE_REPAIR || this == ATTACHMENT_REPAIR;
    }

    /** Returns whether this is one of touch-up, rework and replacement, of which the strongest covers the others. */
    public boolean isSealantRun() {
        return this == TOUCH_UP || this == REWORK || this == SEALANT_REPLACEMENT;
    }

    /** Returns whether this work, done, also does the other: itself, or a stronger run of sealant. */
    public boolean covers(Work other) {
        return this == other || (isSealantRun() && other.isSealantRun() && compareTo(other) > 0);
    }

    /** Returns whether something on the roof is mended, so that a second person may have to release it. */
    public boolean isRepair() {
        return needsSealant() || this == WORKSHOP_REFERRAL;
    }
}
