package dev.lapwing.people.domain;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;

/**
 * A weekly turn of duty of one person at a depot.
 *
 * @param starts local time on that day of the week
 * @param ends local time; when it is not after the start, on the day after, so that equal times are a full day
 * @param place 1 for who is called first, 2 for who is called next, and so on
 */
public record DutyTurn(DayOfWeek weekday, LocalTime starts, LocalTime ends, String username, int place) {

    /**
     * Returns the span of the turn that begins on a date. A local time that the clocks skip counts as the first after
     * the gap, one that comes twice as the earlier, as {@code java.time} has it.
     */
    Span on(LocalDate date, ZoneId zone) {
        LocalDate endDate = ends.isAfter(starts) ? date : date.plusDays(1);
        return new Span(
                date.atTime(starts).atZone(zone).toInstant(),
                endDate.atTime(ends).atZone(zone).toInstant());
    }
}
