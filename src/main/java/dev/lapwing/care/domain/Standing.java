package dev.lapwing.care.domain;

import dev.lapwing.platform.Worded;
import java.time.LocalDate;

/** How an open task stands today, in the order in which people should look at it. */
public enum Standing implements Worded {
    /** Answers a strike: due at once, whatever the date. */
    STRIKE("strike"),
    /** Its last day has passed. */
    LATE("late"),
    /** Its window is open. */
    DUE("due"),
    /** Its window opens later. */
    COMING("coming");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /** Returns the standing of a task on a date of its depot. */
    public static Standing of(TaskKind kind, DueWindow window, LocalDate today) {
        if (kind == TaskKind.STRIKE_INSPECTION) {
            return STRIKE;
        }
        if (today.isAfter(window.late())) {
            return LATE;
        }
        return today.isBefore(window.opens()) ? COMING : DUE;
    }
}
