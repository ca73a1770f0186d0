package dev.lapwing.use.domain;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Objects;

/**
 * One entry of the rental log.
 *
 * @param kind rental, storage or workshop
 * @param from when it began or is booked to begin
 * @param until when it ended or is booked to end, not included; null while the end is not known
 */
public record LogSpan(LogKind kind, Instant from, Instant until) {
    public LogSpan {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(from, "from");
        if (until != null && until.isBefore(from)) {
            throw new IllegalArgumentException("ends at " + until + " before it begins at " + from);
        }
    }

    /** Returns the local days the span touches; a span that ends at midnight does not touch the day that begins. */
    public DaySpan days(ZoneId zone) {
        LocalDate first = from.atZone(zone).toLocalDate();
        if (until == null) {
            return new DaySpan(first, null);
        }
        Instant lastMoment = until.isAfter(from) ? until.minusNanos(1) : until;
        return new DaySpan(first, lastMoment.atZone(zone).toLocalDate());
    }
}
