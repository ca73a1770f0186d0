package dev.lapwing.use.domain;

import java.time.LocalDate;
import java.util.Objects;

/**
 * Local days in a row, both ends included.
 *
 * @param first first day
 * @param last last day, null while it goes on
 */
public record DaySpan(LocalDate first, LocalDate last) {
    public DaySpan {
        Objects.requireNonNull(first, "first");
        if (last != null && last.isBefore(first)) {
            throw new IllegalArgumentException("last day " + last + " is before first day " + first);
        }
    }

    public boolean contains(LocalDate day) {
        return !day.isBefore(first) && (last == null || !day.isAfter(last));
    }
}
