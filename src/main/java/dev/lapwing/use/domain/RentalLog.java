package dev.lapwing.use.domain;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * The rental log of one unit, read by the local days of its depot. Order and overlap of the spans do not matter.
 *
 * @param spans entries, past and booked
 * @param zone zone of the depot
 */
public record RentalLog(List<LogSpan> spans, ZoneId zone) {
    private static final List<LogKind> WEAKEST_FIRST = List.of(LogKind.STORAGE, LogKind.WORKSHOP, LogKind.RENTAL);

    public RentalLog {
        spans = List.copyOf(spans);
        Objects.requireNonNull(zone, "zone");
    }

    /** Returns the days out, past and booked, as the care engine reads them. */
    public List<DaySpan> rentals() {
        var rentals = new ArrayList<DaySpan>();
        for (LogSpan span : spans) {
            if (span.kind() == LogKind.RENTAL) {
                rentals.add(span.days(zone));
            }
        }
        return rentals;
    }

    /** Returns the first day of the log, or null when it is empty. */
    public LocalDate firstDay() {
        return spans.stream()
                .map(span -> span.days(zone).first())
                .min(LocalDate::compareTo)
                .orElse(null);
    }

    /** Returns what the unit did on each day, both ends included. */
    public DayUse[] days(LocalDate first, LocalDate last) {
        int count = index(first, last) + 1;
        var days = new DayUse[count];
        Arrays.fill(days, DayUse.YARD);
        for (LogKind kind : WEAKEST_FIRST) {
            spans.stream().filter(span -> span.kind() == kind).forEach(span -> paint(days, first, span));
        }
        LocalDate known = firstDay();
        int unknown = known == null ? count : Math.min(count, index(first, known));
        if (unknown > 0) {
            Arrays.fill(days, 0, unknown, DayUse.UNRECORDED);
        }
        return days;
    }

    private void paint(DayUse[] days, LocalDate first, LogSpan span) {
        DaySpan touched = span.days(zone);
        int from = Math.max(0, index(first, touched.first()));
        int to = touched.last() == null ? days.length : Math.min(days.length, index(first, touched.last()) + 1);
        if (from < to) {
            Arrays.fill(days, from, to, useOf(span.kind()));
        }
    }

    private static int index(LocalDate first, LocalDate day) {
        return Math.toIntExact(day.toEpochDay() - first.toEpochDay());
    }

    private static DayUse useOf(LogKind kind) {
        return switch (kind) {
            case RENTAL -> DayUse.OUT;
            case WORKSHOP -> DayUse.WORKSHOP;
            case STORAGE -> DayUse.STORED;
        };
    }
}
