package dev.lapwing.reading;

import java.util.Locale;

/** A sentence that a lexicon gives in its language. {@code {0}} and {@code {1}} stand for words of the note. */
enum Sentence {
    CONTACT_WITH_OVERHEAD,
    CONTACT_WITH_ROOF,
    CAME_DOWN,
    ROOF_DAMAGE,
    CONTACT_SAID,
    TOO_LOW,
    OPEN_CONTACT,
    OPEN_DAMAGE,
    OPEN_SOUND,
    OPEN_HEIGHT,
    TOGETHER_CONTACT,
    TOGETHER_OPEN,
    NOTHING,
    DENIED,
    NEARLY,
    ONLY_SUPPOSED,
    BEFORE,
    BELOW_ROOF,
    QUESTION,
    QUESTION_ABOUT;

    /** Returns whether the sentence says that contact is left open. */
    boolean isOpen() {
        return this == OPEN_CONTACT
                || this == OPEN_DAMAGE
                || this == OPEN_SOUND
                || this == OPEN_HEIGHT
                || this == TOGETHER_OPEN;
    }

    /** Returns whether the sentence says why there was no contact. */
    boolean isNone() {
        return this == NOTHING
                || this == DENIED
                || this == NEARLY
                || this == ONLY_SUPPOSED
                || this == BEFORE
                || this == BELOW_ROOF;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Sentence ofWord(String word) {
        for (Sentence sentence : values()) {
            if (sentence.word().equals(word)) {
                return sentence;
            }
        }
        return null;
    }
}
