package dev.lapwing.jobs.domain.sheet;

import dev.lapwing.jobs.domain.Words;

/** Whether a roof bears a person. */
public enum Footing {
    WALKABLE,
    NO_WALK,
    /** Not recorded; treated as no-walk. */
    UNKNOWN;

    /** Reads the recorded word; null and anything not understood is unknown, the safer reading. */
    public static Footing of(String word) {
        return Words.read(Footing.class, word).orElse(UNKNOWN);
    }

    /** Returns whether somebody may step onto the roof; never when it is not recorded. */
    public boolean mayStepOn() {
        return this == WALKABLE;
    }
}
