package dev.lapwing.record.web;

import dev.lapwing.platform.Refused;

/** Reads the place in the audit from which a list goes on. */
final class AuditCursor {
    private AuditCursor() {}

    /** Returns the place; the end of the trail when none is given. */
    static long place(String after) {
        if (after == null || after.isBlank()) {
            return Long.MAX_VALUE;
        }
        try {
            return Long.parseLong(after);
        } catch (NumberFormatException wrong) {
            throw Refused.invalid("after", "is not a cursor of this list");
        }
    }
}
