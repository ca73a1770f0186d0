package dev.lapwing.use.domain;

/** What a unit did on one local day. A day with several uses counts as the first of them in this order. */
public enum DayUse {
    OUT("out"),
    WORKSHOP("workshop"),
    STORED("stored"),
    YARD("yard"),
    /** Before the first entry of the log. */
    UNRECORDED("no record");

    private final String word;

    DayUse(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
