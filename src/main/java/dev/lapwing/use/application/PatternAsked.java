package dev.lapwing.use.application;

import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.use.domain.UsePattern;
import dev.lapwing.use.storage.SetPattern;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * A use pattern as a coordinator asks for it, however it is sent.
 *
 * @param pattern full-time or seasonal
 * @param reason why
 * @param until last day it counts, or null for no end
 */
record PatternAsked(String pattern, String reason, LocalDate until) {
    private static final int LONGEST_REASON = 500;
    private static final LocalDate EARLIEST = LocalDate.of(1950, 1, 1);
    private static final LocalDate LATEST = LocalDate.of(9999, 12, 31);
    private static final Map<String, UsePattern> PATTERNS =
            Map.of(UsePattern.FULL_TIME.word(), UsePattern.FULL_TIME, UsePattern.SEASONAL.word(), UsePattern.SEASONAL);

    boolean isSomething() {
        return pattern != null || reason != null || until != null;
    }

    /** Returns what is wrong, under the names that the fields have where it was sent. */
    List<FieldError> errors(String patternField, String reasonField, String untilField) {
        var errors = new FieldErrors();
        if (errors.present(pattern, patternField)) {
            errors.check(PATTERNS.containsKey(plain()), patternField, "must be one of full-time, seasonal");
        }
        if (errors.present(reason, reasonField)) {
            errors.atMost(reason, LONGEST_REASON, reasonField);
            errors.check(reason.indexOf('\0') < 0, reasonField, "holds a NUL character");
        }
        boolean inReach = until == null || !until.isBefore(EARLIEST) && !until.isAfter(LATEST);
        errors.check(inReach, untilField, "must lie from 1950 to 9999");
        return errors.list();
    }

    /** Returns whether this is what is set already. */
    boolean isSameAs(SetPattern set) {
        return set.pattern == PATTERNS.get(plain())
                && set.reason.equals(reason.strip())
                && Objects.equals(set.setUntil, until);
    }

    /** Fills in what was asked, once it was found to be right. */
    void fill(SetPattern set) {
        set.pattern = PATTERNS.get(plain());
        set.reason = reason.strip();
        set.setUntil = until;
    }

    private String plain() {
        return pattern.strip().toLowerCase(Locale.ROOT);
    }
}
