package dev.lapwing.fleet;

import com.fasterxml.jackson.annotation.JsonCreator;
import dev.lapwing.platform.Worded;
import dev.lapwing.platform.Words;

/** Where a unit stands between rentals; weather and trees age a roof. */
public enum Storage implements Worded {
    INSIDE("inside"),
    OUTSIDE("outside"),
    UNDER_TREES("under trees");

    private final String word;

    Storage(String word) {
        this.word = word;
    }

    /** Returns the constant with this word. */
    @JsonCreator
    public static Storage of(String word) {
        return Words.parse(Storage.class, word);
    }

    @Override
    public String word() {
        return word;
    }
}
