package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;

/** Words for the reasons the engine gives. */
final class Wording {
    private static final String[] MONTHS = months();

    private Wording() {}

    /** Returns a date as {@code 12 Aug 2026}. */
    static String day(LocalDate date) {
        return date.getDayOfMonth() + " " + MONTHS[date.getMonthValue() - 1] + " " + date.getYear();
    }

    static String days(int count) {
        return count + (count == 1 ? " day" : " days");
    }

    private static String[] months() {
        var names = new String[12];
        for (Month month : Month.values()) {
            names[month.getValue() - 1] = month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
        }
        return names;
    }
}
