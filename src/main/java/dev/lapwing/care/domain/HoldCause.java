package dev.lapwing.care.domain;

import dev.lapwing.platform.Worded;

/** Why a unit must not be rented. */
public enum HoldCause implements Worded {
    STRIKE("strike"),
    /** It is open whether the roof was struck. */
    QUESTION("question"),
    /** An inspection found damage. */
    FINDING("finding");

    private final String word;

    HoldCause(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
