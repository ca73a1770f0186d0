package dev.lapwing.fleet.imports;

import dev.lapwing.platform.Worded;

/** Where an import stands. */
public enum ImportState implements Worded {
    RUNNING("running"),
    DONE("done"),
    FAILED("failed");

    private final String word;

    ImportState(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
