package dev.lapwing.use.domain;

/** How a unit is used over the year. */
public enum UsePattern {
    FULL_TIME("full-time"),
    SEASONAL("seasonal"),
    /** Too little log to tell; cared for as full-time, the safer rule. */
    UNKNOWN("unknown");

    private final String word;

    UsePattern(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Returns the pattern whose care applies: never {@link #UNKNOWN}. */
    public UsePattern caredForAs() {
        return this == UNKNOWN ? FULL_TIME : this;
    }
}
