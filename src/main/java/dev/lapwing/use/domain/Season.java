package dev.lapwing.use.domain;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.Objects;

/**
 * The rental season of a depot or of one unit, by calendar days that return every year. It may cross New Year, so it
 * serves both hemispheres. 29 February counts as 28 February in common years.
 *
 * @param opens first day of the season
 * @param closes last day of the season
 */
public record Season(MonthDay opens, MonthDay closes) {
    /** Shortest season and shortest time between seasons, in days: shorter ones leave no room for two inspections. */
    public static final int SHORTEST_DAYS = 70;

    private static final int COMMON_YEAR = 2025;

    public Season {
        Objects.requireNonNull(opens, "opens");
        Objects.requireNonNull(closes, "closes");
        long days = daysInside(opens, closes);
        if (days < SHORTEST_DAYS || 365 - days < SHORTEST_DAYS) {
            throw new IllegalArgumentException("a season leaves at least " + SHORTEST_DAYS
                    + " days inside and outside of it, but " + opens + " to " + closes + " has " + days + " inside");
        }
    }

    /** Reads a season from two texts such as {@code 04-01} and {@code 10-31}. */
    public static Season of(String opens, String closes) {
        return new Season(MonthDay.parse("--" + opens), MonthDay.parse("--" + closes));
    }

    /** Returns the unit's own season if it has one, else that of its depot, which may be null too. */
    public static Season inForce(Season ofUnit, Season ofDepot) {
        return ofUnit != null ? ofUnit : ofDepot;
    }

    /** Returns the run of the season that opens in the given calendar year. */
    public DaySpan openingIn(int year) {
        LocalDate first = opens.atYear(year);
        LocalDate last = closes.atYear(crossesNewYear() ? year + 1 : year);
        return new DaySpan(first, last);
    }

    /** Returns the latest run of the season that has opened by the given day, over or not. */
    public DaySpan latestOpenedBy(LocalDate day) {
        DaySpan sameYear = openingIn(day.getYear());
        return sameYear.first().isAfter(day) ? openingIn(day.getYear() - 1) : sameYear;
    }

    public boolean contains(LocalDate day) {
        return latestOpenedBy(day).contains(day);
    }

    boolean crossesNewYear() {
        return closes.isBefore(opens);
    }

    private static long daysInside(MonthDay opens, MonthDay closes) {
        int lastYear = closes.isBefore(opens) ? COMMON_YEAR + 1 : COMMON_YEAR;
        return ChronoUnit.DAYS.between(opens.atYear(COMMON_YEAR), closes.atYear(lastYear)) + 1;
    }
}
