package dev.lapwing.photos;

import dev.lapwing.platform.Worded;

/** What a photo was added to. */
public enum PhotoSource implements Worded {
    REPORT("report"),
    TASK("task");

    private final String word;

    PhotoSource(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
