package dev.lapwing.reading;

import java.util.Locale;

/** What a note says about overhead contact. */
public enum ContactVerdict {
    /** Something overhead touched the roof, or what is mounted on it. */
    CONTACT,
    /** The note leaves it open; the desk is asked. */
    UNCLEAR,
    /** Nothing in the note speaks of overhead contact. */
    NONE;

    /** Returns the word used in the HTTP contract: contact, unclear or none. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
