package dev.lapwing.fleet;

import com.fasterxml.jackson.annotation.JsonCreator;
import dev.lapwing.platform.Worded;
import dev.lapwing.platform.Words;

/** Whether a roof bears a person. What is unknown is treated as no-walk. */
public enum Footing implements Worded {
    WALKABLE("walkable"),
    NO_WALK("no-walk"),
    UNKNOWN("unknown");

    private final String word;

    Footing(String word) {
        this.word = word;
    }

    /** Returns the constant with this word. */
    @JsonCreator
    public static Footing of(String word) {
        return Words.parse(Footing.class, word);
    }

    @Override
    public String word() {
        return word;
    }
}
