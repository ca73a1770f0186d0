package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;

/**
 * When a unit is under the company's control and rented out.
 *
 * @param from first day of the present time in service
 * @param awaySince day it had left before {@code from}, null when it is new to the fleet
 * @param until first day no longer in service, null while it stays
 * @param sold whether it leaves for good at {@code until}
 */
public record Service(LocalDate from, LocalDate awaySince, LocalDate until, boolean sold) {
    public Service {
        Objects.requireNonNull(from, "from");
        if (awaySince != null && awaySince.isAfter(from)) {
            throw new IllegalArgumentException("away since " + awaySince + " is after the return on " + from);
        }
    }

    /** Returns the service of a unit that joined the fleet on this day and stays. */
    public static Service since(LocalDate from) {
        return new Service(from, null, null, false);
    }

    boolean covers(LocalDate day) {
        return !day.isBefore(from) && (until == null || day.isBefore(until));
    }

    boolean endedBy(LocalDate day) {
        return until != null && !day.isBefore(until);
    }

    boolean goneBy(LocalDate day) {
        return sold && endedBy(day);
    }

    /** Returns whether a roof of this day was put on after the unit was known; one that came back was known before. */
    boolean mayHaveSeenNew(LocalDate roofOf) {
        return awaySince != null || roofOf.isAfter(from);
    }

    boolean newOrAwayLonger(int days) {
        return awaySince == null || ChronoUnit.DAYS.between(awaySince, from) > days;
    }
}
