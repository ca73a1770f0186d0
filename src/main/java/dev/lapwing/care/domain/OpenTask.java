package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.util.Objects;

/**
 * A task that is neither done nor called off.
 *
 * @param id stable id
 * @param kind what is to be done
 * @param origin what brought it about
 * @param window when it is due
 * @param plannedOn local day it was made
 * @param touched whether a person has assigned, moved, started or edited it: then the engine leaves it alone
 * @param event id of the event it answers, null if none
 */
public record OpenTask(
        String id,
        TaskKind kind,
        TaskOrigin origin,
        DueWindow window,
        LocalDate plannedOn,
        boolean touched,
        String event) {
    public OpenTask {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(origin, "origin");
        Objects.requireNonNull(window, "window");
        Objects.requireNonNull(plannedOn, "plannedOn");
    }
}
