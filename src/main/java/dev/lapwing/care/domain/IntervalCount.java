package dev.lapwing.care.domain;

import java.time.LocalDate;

/**
 * Counts an interval through the work done. Routine work and intake always start the count anew from the day they were
 * done. Other inspections do so only when they served routine work, that is when it was due within the combining days;
 * a strike inspection long before the due day leaves the due day where it is. Months count from the first date of a run
 * of work done on its exact day, so that a date clipped at a month end does not stay clipped.
 */
final class IntervalCount {
    private final Every every;
    private final int combineDays;
    private LocalDate first;
    private int times;

    private IntervalCount(Every every, int combineDays) {
        this.every = every;
        this.combineDays = combineDays;
    }

    static IntervalCount through(Inspected inspected, Every every, int combineDays) {
        var count = new IntervalCount(every, combineDays);
        count.first = inspected.newRoofOn();
        for (DoneWork work : inspected.done()) {
            count.pass(work);
        }
        return count;
    }

    private void pass(DoneWork work) {
        LocalDate due = next();
        boolean counts = due == null || work.origin().scheduled() || !work.on().isBefore(due.minusDays(combineDays));
        if (!counts) {
            return;
        }
        if (work.on().equals(due)) {
            times++;
        } else {
            first = work.on();
            times = 0;
        }
    }

    /** Returns the day last counted from, or null when nothing was ever done. */
    LocalDate last() {
        return first == null ? null : every.after(first, times);
    }

    /** Returns the next due day, or null when nothing was ever done. */
    LocalDate next() {
        return first == null ? null : every.after(first, times + 1);
    }
}
