package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A span that returns: so many days, or so many months.
 *
 * <p>Months are counted from the first date, not from the one before, and are clipped at the month end: every month from
 * 31 January gives 28 February, 31 March, 30 April. No month is ever skipped, and a date once clipped does not stay so.
 *
 * @param count how many, at least 1
 * @param unit days or months
 */
public record Every(int count, Unit unit) {
    /** What is counted. */
    public enum Unit {
        DAYS,
        MONTHS
    }

    private static final Pattern TEXT = Pattern.compile("(\\d{1,4}) (day|month)s?");

    public Every {
        if (count < 1) {
            throw new IllegalArgumentException("must count at least 1, was " + count);
        }
    }

    public static Every days(int count) {
        return new Every(count, Unit.DAYS);
    }

    public static Every months(int count) {
        return new Every(count, Unit.MONTHS);
    }

    /** Reads a text such as {@code 91 days} or {@code 3 months}. */
    public static Every parse(String text) {
        Matcher matcher = TEXT.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            throw new IllegalArgumentException("must read like '91 days' or '3 months', was '" + text + "'");
        }
        int count = Integer.parseInt(matcher.group(1));
        return matcher.group(2).equals("day") ? days(count) : months(count);
    }

    /** Returns the date that lies {@code times} spans after the first date; 0 gives the first date itself. */
    public LocalDate after(LocalDate first, int times) {
        long total = (long) count * times;
        return unit == Unit.DAYS ? first.plusDays(total) : first.plusMonths(total);
    }

    /** Returns the fewest days one span can have, wherever it starts. */
    public int shortestDays() {
        return lengths().min().orElseThrow();
    }

    /** Returns the most days one span can have, wherever it starts. */
    public int longestDays() {
        return lengths().max().orElseThrow();
    }

    /** Four years hold a leap day and every month end there is. */
    private IntStream lengths() {
        return LocalDate.of(2024, 1, 1).datesUntil(LocalDate.of(2028, 1, 1)).mapToInt(first ->
                (int) ChronoUnit.DAYS.between(first, after(first, 1)));
    }

    @Override
    public String toString() {
        String word = unit == Unit.DAYS ? "day" : "month";
        return count + " " + word + (count == 1 ? "" : "s");
    }
}
