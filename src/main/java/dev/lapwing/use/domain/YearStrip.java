package dev.lapwing.use.domain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A year of a unit at a glance: runs of days with the same use, oldest first.
 *
 * @param runs the runs, without a gap between them
 */
public record YearStrip(List<Run> runs) {
    /** Length of a strip. */
    public static final int DAYS = 365;

    /**
     * Days in a row with the same use, all inside or all outside the season.
     *
     * @param first first day
     * @param days how many days, at least 1
     */
    public record Run(DayUse use, boolean inSeason, LocalDate first, int days) {}

    public YearStrip {
        runs = List.copyOf(runs);
    }

    /**
     * Returns the strip that ends on the given day.
     *
     * @param season the unit's season, null if it has none: then no day is in season
     */
    public static YearStrip endingOn(LocalDate last, RentalLog log, Season season) {
        LocalDate first = last.minusDays(DAYS - 1L);
        DayUse[] uses = log.days(first, last);
        var runs = new ArrayList<Run>();
        int start = 0;
        for (int day = 1; day <= DAYS; day++) {
            if (day == DAYS
                    || uses[day] != uses[start]
                    || inSeason(season, first, day) != inSeason(season, first, start)) {
                runs.add(new Run(uses[start], inSeason(season, first, start), first.plusDays(start), day - start));
                start = day;
            }
        }
        return new YearStrip(runs);
    }

    private static boolean inSeason(Season season, LocalDate first, int day) {
        return season != null && season.contains(first.plusDays(day));
    }
}
