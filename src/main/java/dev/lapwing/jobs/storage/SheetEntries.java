package dev.lapwing.jobs.storage;

import java.util.UUID;

/** Counts what was entered on a sheet. The number only grows, so two looks with the same number saw the same sheet. */
public final class SheetEntries {
    private SheetEntries() {}

    /** Returns how many findings were recorded for a task and taken back. */
    public static int of(UUID taskId) {
        return (int) (RecordedFinding.everRecorded(taskId) + WithdrawnFinding.count("taskId", taskId));
    }
}
