package dev.lapwing.fleet;

import com.fasterxml.jackson.annotation.JsonCreator;
import dev.lapwing.platform.Worded;
import dev.lapwing.platform.Words;

/** Whether a unit is rented out and its roof cared for. */
public enum ServiceState implements Worded {
    IN_SERVICE("in service"),
    OUT_OF_SERVICE("out of service"),
    SOLD("sold");

    private final String word;

    ServiceState(String word) {
        this.word = word;
    }

    /** Returns the constant with this word. */
    @JsonCreator
    public static ServiceState of(String word) {
        return Words.parse(ServiceState.class, word);
    }

    @Override
    public String word() {
        return word;
    }
}
