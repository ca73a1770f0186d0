package dev.lapwing.care.domain;

import dev.lapwing.platform.Worded;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** What brought a task about. */
public enum TaskOrigin implements Worded {
    INTERVAL("interval"),
    SEASON_OPENING("season opening"),
    SEASON_CLOSING("season closing"),
    /** Before the first rental of a unit new to the fleet or long away. */
    INTAKE("intake"),
    STRIKE("strike"),
    WATER_INSIDE("water inside"),
    STORM("storm"),
    PART_LOST("part lost"),
    /** From the findings of an inspection. */
    FOLLOW_UP("follow-up"),
    /** Added by a person. */
    BY_HAND("by hand");

    /** The origins that answer something that happened to the roof. */
    public static final Set<TaskOrigin> EVENTS = Collections.unmodifiableSet(EnumSet.range(STRIKE, PART_LOST));

    private final String word;

    TaskOrigin(String word) {
        this.word = word;
    }

    @Override
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
        return EVENTS.contains(this);
    }
}
