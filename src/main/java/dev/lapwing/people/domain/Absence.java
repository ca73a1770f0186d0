package dev.lapwing.people.domain;

import java.time.LocalDate;

/** A person takes no turn that begins on these days; both are part of it. */
public record Absence(String username, LocalDate from, LocalDate until) {

    boolean covers(String someone, LocalDate date) {
        return username.equals(someone) && !date.isBefore(from) && !date.isAfter(until);
    }
}
