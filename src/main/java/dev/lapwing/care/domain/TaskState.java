package dev.lapwing.care.domain;

import dev.lapwing.platform.Worded;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** Where a task stands. */
public enum TaskState implements Worded {
    PLANNED("planned"),
    ASSIGNED("assigned"),
    ACCEPTED("accepted"),
    UNDER_WAY("under way"),
    DONE("done"),
    CALLED_OFF("called off");

    /** The states in which something is still to be done. */
    public static final Set<TaskState> OPEN = Collections.unmodifiableSet(EnumSet.range(PLANNED, UNDER_WAY));

    private final String word;

    TaskState(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    public boolean open() {
        return OPEN.contains(this);
    }
}
