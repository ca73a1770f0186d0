package dev.lapwing.use.application;

import dev.lapwing.platform.FieldErrors;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;

/**
 * One end of an entry of the log as it was sent, and what holds for the time of every entry, however it is entered.
 *
 * @param field name of the field it was sent in
 * @param time the time, or null
 */
record LogTimes(String field, OffsetDateTime time) {
    static final int LONGEST_REFERENCE = 100;
    private static final Instant EARLIEST = Instant.parse("1990-01-01T00:00:00Z");
    private static final Duration FARTHEST_AHEAD = Duration.ofDays(5 * 365);

    /** Notes what is wrong with the two ends; a null last one is an open end. */
    static void check(LogTimes first, LogTimes last, Instant now, FieldErrors errors) {
        if (!errors.present(first.time, first.field) || !first.inReach(now, errors)) {
            return;
        }
        if (last.time != null && last.inReach(now, errors)) {
            boolean after = exact(last.time).isAfter(exact(first.time));
            errors.check(after, last.field, "must lie after " + first.field);
        }
    }

    /** Returns the instant as exactly as it is stored, in microseconds; null for null. */
    static Instant exact(OffsetDateTime time) {
        return time == null ? null : time.toInstant().truncatedTo(ChronoUnit.MICROS);
    }

    /** Returns what is said when an entry shares time with another. */
    static String overlap(String kind, Instant from, Instant until) {
        return "overlaps the " + kind + " from " + from + " to " + (until == null ? "an open end" : until);
    }

    private boolean inReach(Instant now, FieldErrors errors) {
        Instant instant = time.toInstant();
        boolean fits = !instant.isBefore(EARLIEST) && !instant.isAfter(now.plus(FARTHEST_AHEAD));
        return errors.check(fits, field, "must lie between 1990 and five years from now");
    }
}
