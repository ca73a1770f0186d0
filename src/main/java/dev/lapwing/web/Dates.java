package dev.lapwing.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Writes dates and times for people. */
public final class Dates {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE d MMM uuuu, HH:mm", Locale.ENGLISH);

    private Dates() {}

    /** Returns a date such as "Wed 25 Nov 2026"; null stays null. */
    public static String day(LocalDate date) {
        return date == null ? null : DAY.format(date);
    }

    /** Returns a day without its weekday, such as "25 Nov 2026". */
    public static String plainDay(LocalDate date) {
        return SHORT.format(date);
    }

    /** Returns a local time such as "Wed 25 Nov 2026, 09:30"; null stays null. */
    public static String time(Instant instant, ZoneId zone) {
        return instant == null ? null : TIME.format(instant.atZone(zone));
    }
}
