package dev.lapwing.care;

import java.util.UUID;

/** What another area adds to a task's answer, such as its photos. */
public interface TaskFacet {
    /** Name of the field in the answer. */
    String name();

    /** Returns the value for a task. */
    Object valueOf(UUID taskId);
}
