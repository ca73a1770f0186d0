package dev.lapwing.care;

import dev.lapwing.care.storage.CareTask;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Knows what has to come before work may begin, and what has to wait for the work. */
public interface WorkWaits {
    /**
     * Something that has to come first.
     *
     * @param decision whether it is a decision of the coordinator
     * @param words what it is, as it stands after "waits:"
     */
    record Wait(boolean decision, String words) {}

    /** Returns what tasks wait for, by task; those that wait for nothing are left out. */
    Map<UUID, List<Wait>> of(Collection<CareTask> tasks);

    /** Returns whether an open hold of the unit stands until this task is done. */
    boolean holds(CareTask task);
}
