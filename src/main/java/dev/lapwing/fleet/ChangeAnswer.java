package dev.lapwing.fleet;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import dev.lapwing.platform.Refused;
import java.time.OffsetDateTime;
import java.time.ZoneId;

/** A change of what is known of a unit, as it is answered; an old or new value of nothing is left out. */
@JsonInclude(JsonInclude.Include.NON_NULL)
record ChangeAnswer(
        OffsetDateTime at,
        String by,
        String field,
        String old,
        @JsonProperty("new") String now,
        String reason) {
    private static final int DIGITS = 9;

    static ChangeAnswer of(UnitChange change, ZoneId zone) {
        return new ChangeAnswer(
                change.changedAt.atZone(zone).toOffsetDateTime(),
                change.changedBy,
                change.field,
                change.oldText,
                change.newText,
                change.reason);
    }

    /** Reads a cursor of the list of changes: how many were seen. */
    static int cursor(String after) {
        if (after == null || after.isBlank()) {
            return 0;
        }
        if (after.length() > DIGITS || !after.chars().allMatch(digit -> digit >= '0' && digit <= '9')) {
            throw Refused.invalid("after", "is not a cursor of this list");
        }
        return Integer.parseInt(after);
    }
}
