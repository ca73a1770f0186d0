package dev.lapwing.fleet;

import com.fasterxml.jackson.annotation.JsonCreator;
import dev.lapwing.platform.Worded;
import dev.lapwing.platform.Words;

/** What kind of vehicle a unit is. */
public enum UnitKind implements Worded {
    MOTORHOME("motorhome"),
    VAN("van"),
    TRAILER("trailer");

    private final String word;

    UnitKind(String word) {
        this.word = word;
    }

    /** Returns the constant with this word. */
    @JsonCreator
    public static UnitKind of(String word) {
        return Words.parse(UnitKind.class, word);
    }

    @Override
    public String word() {
        return word;
    }
}
