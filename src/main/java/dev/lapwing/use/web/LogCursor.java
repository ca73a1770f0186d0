package dev.lapwing.use.web;

import dev.lapwing.platform.Refused;
import java.time.Instant;
import java.time.format.DateTimeParseException;

/** The cursor of the lists of a unit's log: when the last entry seen began. */
final class LogCursor {
    private LogCursor() {}

    /** Returns the moment, or null when no cursor was sent. */
    static Instant read(String after) {
        if (after == null || after.isBlank()) {
            return null;
        }
        try {
            return Instant.parse(after);
        } catch (DateTimeParseException wrong) {
            throw Refused.invalid("after", "is not a cursor of this list");
        }
    }
}
