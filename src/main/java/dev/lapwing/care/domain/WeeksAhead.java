package dev.lapwing.care.domain;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets the work that is planned at a depot against the days its units stand in the yard, week by week.
 *
 * <p>A unit stands in the yard on a day when it is not out at noon, local time. Work due before this week counts in
 * this week: it still has to be done.
 */
public final class WeeksAhead {
    /**
     * One week.
     *
     * @param monday its first day
     * @param tasks how many tasks are due in it
     * @param yardDays days in the yard of all units together
     */
    public record Week(LocalDate monday, int tasks, long yardDays) {}

    /** A time a unit is out; a null end means that its return is not known. */
    public record Out(Instant from, Instant until) {}

    private final LocalDate first;
    private final ZoneId zone;
    private final int[] tasks;
    private final long[] outDays;

    /** @param today the local day at the depot */
    public WeeksAhead(LocalDate today, ZoneId zone, int weeks) {
        this.first = today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        this.zone = zone;
        this.tasks = new int[weeks];
        this.outDays = new long[weeks];
    }

    /** Counts a task; one that is due beyond the last week is left out. */
    public void addTask(LocalDate due) {
        long week = Math.max(0, ChronoUnit.WEEKS.between(first, due));
        if (week < tasks.length) {
            tasks[(int) week]++;
        }
    }

    /** Counts the days on which a unit is out at noon. */
    public void addOut(Out out) {
        LocalDate end = first.plusWeeks(tasks.length);
        LocalDate from = out.from().atZone(zone).toLocalDate();
        for (LocalDate day = from.isBefore(first) ? first : from; day.isBefore(end); day = day.plusDays(1)) {
            Instant noon = day.atTime(LocalTime.NOON).atZone(zone).toInstant();
            if (out.until() != null && !out.until().isAfter(noon)) {
                return;
            }
            if (!out.from().isAfter(noon)) {
                outDays[(int) ChronoUnit.WEEKS.between(first, day)]++;
            }
        }
    }

    /** Returns the weeks for so many units. */
    public List<Week> weeks(long units) {
        List<Week> weeks = new ArrayList<>();
        for (int i = 0; i < tasks.length; i++) {
            weeks.add(new Week(first.plusWeeks(i), tasks[i], units * 7 - outDays[i]));
        }
        return weeks;
    }
}
