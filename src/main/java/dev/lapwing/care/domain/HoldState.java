package dev.lapwing.care.domain;

import dev.lapwing.platform.Worded;

/** Whether a hold still keeps its unit in the yard. */
public enum HoldState implements Worded {
    OPEN("open"),
    RELEASED("released");

    private final String word;

    HoldState(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
