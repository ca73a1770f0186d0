package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.util.Objects;

/**
 * Work that was signed off.
 *
 * @param kind what was done
 * @param origin what had brought it about
 * @param on local day of the sign-off
 * @param event id of the event it answered, null if none
 */
public record DoneWork(TaskKind kind, TaskOrigin origin, LocalDate on, String event) {
    public DoneWork {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(origin, "origin");
        Objects.requireNonNull(on, "on");
    }
}
