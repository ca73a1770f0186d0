package dev.lapwing.use.application;

import dev.lapwing.platform.FieldErrors;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;

/** What holds for the time of every rental, however it is entered. */
final class RentalSpan {
    static final int LONGEST_REFERENCE = 100;
    private static final Instant EARLIEST = Instant.parse("1990-01-01T00:00:00Z");
    private static final Duration FARTHEST_AHEAD = Duration.ofDays(5 * 365);

    private RentalSpan() {}

    /** Notes what is wrong with the times {@code out} and {@code back}; a null back is an open end. */
    static void check(OffsetDateTime out, OffsetDateTime back, Instant now, FieldErrors errors) {
        if (!errors.present(out, "out") || !inReach(out, "out", now, errors)) {
            return;
        }
        if (back != null && inReach(back, "back", now, errors)) {
            errors.check(exact(back).isAfter(exact(out)), "back", "must lie after out");
        }
    }

    /** Returns the instant as exactly as it is stored, in microseconds; null for null. */
    static Instant exact(OffsetDateTime time) {
        return time == null ? null : time.toInstant().truncatedTo(ChronoUnit.MICROS);
    }

    static String overlap(Instant out, Instant back) {
        return "overlaps the rental from " + out + " to " + (back == null ? "an open end" : back);
    }

    private static boolean inReach(OffsetDateTime time, String field, Instant now, FieldErrors errors) {
        Instant instant = time.toInstant();
        boolean fits = !instant.isBefore(EARLIEST) && !instant.isAfter(now.plus(FARTHEST_AHEAD));
        return errors.check(fits, field, "must lie between 1990 and five years from now");
    }
}
