package dev.lapwing.reading;

import java.util.Locale;

/** What a piece of the note contributes to its reading. */
public enum EvidenceRole {
    CONTACT,
    OVERHEAD,
    ROOF,
    FALL,
    DAMAGE,
    NEGATION,
    HYPOTHETICAL,
    PAST,
    BELOW_ROOF;

    /** Returns the word used in the HTTP contract, such as {@code below-roof}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
