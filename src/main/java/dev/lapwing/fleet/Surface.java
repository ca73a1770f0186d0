package dev.lapwing.fleet;

import com.fasterxml.jackson.annotation.JsonCreator;
import dev.lapwing.platform.Worded;
import dev.lapwing.platform.Words;

/** What a roof is covered with. */
public enum Surface implements Worded {
    EPDM("EPDM"),
    TPO("TPO"),
    PVC("PVC"),
    FIBREGLASS("fibreglass"),
    ALUMINIUM("aluminium"),
    GALVANISED_STEEL("galvanised steel"),
    OTHER("other");

    private final String word;

    Surface(String word) {
        this.word = word;
    }

    /** Returns the constant with this word. */
    @JsonCreator
    public static Surface of(String word) {
        return Words.parse(Surface.class, word);
    }

    @Override
    public String word() {
        return word;
    }
}
