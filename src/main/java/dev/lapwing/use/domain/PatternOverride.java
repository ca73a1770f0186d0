package dev.lapwing.use.domain;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * A pattern set by the coordinator for a time.
 *
 * @param pattern full-time or seasonal
 * @param reason why, never blank
 * @param by who set it
 * @param from first day it counts
 * @param until last day it counts
 */
public record PatternOverride(UsePattern pattern, String reason, String by, LocalDate from, LocalDate until) {
    public PatternOverride {
        Objects.requireNonNull(by, "by");
        if (pattern == UsePattern.UNKNOWN) {
            throw new IllegalArgumentException("a pattern can be set to full-time or seasonal");
        }
        if (reason == null || reason.isBlank()) {
            throw new IllegalArgumentException("setting the pattern needs a reason");
        }
        if (until.isBefore(from)) {
            throw new IllegalArgumentException("the end " + until + " is before the start " + from);
        }
    }

    /**
     * Returns the pattern that counts today: the override that began last, or what the log says when none runs.
     *
     * @param derived what the log says
     */
    public static UseInForce inForce(UseInForce derived, List<PatternOverride> overrides, LocalDate today) {
        PatternOverride running = overrides.stream()
                .filter(override -> override.covers(today))
                .max(Comparator.comparing(PatternOverride::from))
                .orElse(null);
        if (running == null) {
            LocalDate since = afterOther(derived.pattern().caredForAs(), derived.since(), overrides, today);
            return new UseInForce(derived.pattern(), since, derived.why());
        }
        boolean sameCare = running.pattern() == derived.pattern().caredForAs();
        LocalDate began = sameCare ? derived.since() : running.startThrough(overrides);
        LocalDate since = afterOther(running.pattern(), began, overrides, today);
        return new UseInForce(running.pattern(), since, running.why());
    }

    /** Returns the day after the last override of another pattern, or the given day, whichever is later. */
    private static LocalDate afterOther(
            UsePattern pattern, LocalDate began, List<PatternOverride> overrides, LocalDate today) {
        return overrides.stream()
                .filter(override -> override.until().isBefore(today))
                .filter(override -> override.pattern() != pattern)
                .map(override -> override.until().plusDays(1))
                .filter(end -> began == null || end.isAfter(began))
                .max(LocalDate::compareTo)
                .orElse(began);
    }

    private boolean covers(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(until);
    }

    /** Returns the day the pattern began, through overrides of the same pattern that follow without a gap. */
    private LocalDate startThrough(List<PatternOverride> overrides) {
        LocalDate start = from;
        boolean extended = true;
        while (extended) {
            LocalDate before = start.minusDays(1);
            LocalDate earlier = overrides.stream()
                    .filter(override -> override.pattern() == pattern && override.covers(before))
                    .map(PatternOverride::from)
                    .min(LocalDate::compareTo)
                    .orElse(start);
            extended = earlier.isBefore(start);
            start = earlier;
        }
        return start;
    }

    private String why() {
        return "set by " + by + " until " + until + ": " + reason;
    }
}
