package dev.lapwing.use.domain;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Says in a few words where a unit is and whether its work fits in before it goes. */
public final class GapNote {
    private static final DateTimeFormatter NEAR = DateTimeFormatter.ofPattern("EEEE HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter FAR = DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm", Locale.ENGLISH);
    private static final int NEAR_DAYS = 6;

    private GapNote() {}

    /**
     * Returns the note for the due list.
     *
     * @param due day the work is due
     * @param late last day before the work is called late
     */
    public static String of(YardGaps gaps, Instant now, LocalDate due, LocalDate late, ZoneId zone) {
        YardGap here = gaps.at(now);
        if (here == null) {
            YardGap next = gaps.after(now);
            return next == null ? "out, return not known" : "out until " + text(next.from(), now, zone);
        }
        if (here.until() == null) {
            return "in the yard, nothing booked";
        }
        String stay = "in the yard until " + text(here.until(), now, zone);
        if (backInTime(gaps, here.until(), late, zone)) {
            return stay;
        }
        boolean beforeDue = here.until().atZone(zone).toLocalDate().isBefore(due);
        return stay + (beforeDue ? ", goes out before its work is due" : "") + ", not back before the work is late";
    }

    private static boolean backInTime(YardGaps gaps, Instant out, LocalDate late, ZoneId zone) {
        boolean lateWhileHere = !out.atZone(zone).toLocalDate().isBefore(late);
        YardGap next = gaps.after(out.minusNanos(1));
        boolean backBefore =
                next != null && !next.from().atZone(zone).toLocalDate().isAfter(late);
        return lateWhileHere || backBefore;
    }

    private static String text(Instant moment, Instant now, ZoneId zone) {
        ZonedDateTime local = moment.atZone(zone);
        long days = ChronoUnit.DAYS.between(now.atZone(zone).toLocalDate(), local.toLocalDate());
        return (days <= NEAR_DAYS ? NEAR : FAR).format(local);
    }
}
