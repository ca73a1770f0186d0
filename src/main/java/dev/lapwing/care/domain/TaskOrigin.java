package dev.lapwing.care.domain;

/** What brought a task about. */
public enum TaskOrigin {
    INTERVAL("interval"),
    SEASON_OPENING("season-opening"),
    SEASON_CLOSING("season-closing"),
    /** Before the first rental of a unit new to the fleet or long away. */
    INTAKE("intake"),
    STRIKE("strike"),
    WATER_INSIDE("water-inside"),
    STORM("storm"),
    PART_LOST("part-lost"),
    /** From the findings of an inspection. */
    FOLLOW_UP("follow-up"),
    /** Added by a person. */
    BY_HAND("by-hand");

    private final String word;

    TaskOrigin(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Returns whether the work comes back by the calendar: interval, season opening, season closing. */
    public boolean routine() {
        return this == INTERVAL || this == SEASON_OPENING || this == SEASON_CLOSING;
    }

    /** Returns whether the engine decides on its own when this work is wanted: routine work and intake. */
    public boolean scheduled() {
        return routine() || this == INTAKE;
    }

    /** Returns whether the work answers something that happened to the roof. */
    public boolean event() {
        return this == STRIKE || this == WATER_INSIDE || this == STORM || this == PART_LOST;
    }
}
