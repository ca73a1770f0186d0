package dev.lapwing.care.domain;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;

/**
 * Something that happened to a roof and asks for an inspection.
 *
 * @param id stable id, which the task that answers it names
 * @param origin strike, water inside, storm or part lost
 * @param at when it was reported; the clock starts here
 * @param day local day of {@code at} at the depot
 */
public record CareEvent(String id, TaskOrigin origin, Instant at, LocalDate day) {
    public CareEvent {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(day, "day");
        if (!origin.event()) {
            throw new IllegalArgumentException(origin.word() + " is not an event");
        }
    }
}
