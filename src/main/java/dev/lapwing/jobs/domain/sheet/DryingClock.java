package dev.lapwing.jobs.domain.sheet;

import java.time.Duration;
import java.time.Instant;

/**
 * Runs the time between wash and inspection. Common practice, no source: wash, let dry, then inspect.
 *
 * @param dryingTime how long a roof dries; the project's default is four hours
 */
public record DryingClock(Duration dryingTime) {
    public DryingClock {
        if (dryingTime.isNegative()) {
            throw new IllegalArgumentException("a drying time is not negative, was " + dryingTime);
        }
    }

    /**
     * Decides whether the inspection may begin.
     *
     * @param washedAt when the wash was finished, or null
     * @param tooDirtyToSee whether the roof is (still or again) too dirty to see
     * @param now the moment it is to begin
     * @param reasonToStartEarly why it begins before the roof has dried, or null
     */
    public InspectionStart start(Instant washedAt, boolean tooDirtyToSee, Instant now, String reasonToStartEarly) {
        if (tooDirtyToSee) {
            return new InspectionStart.WashFirst("the roof is too dirty to see: wash it first");
        }
        if (washedAt == null) {
            return new InspectionStart.WashFirst("the wash is not recorded: wash the roof first");
        }
        if (washedAt.isAfter(now)) {
            return new InspectionStart.WashFirst("the wash is recorded for later, " + washedAt);
        }
        Instant readyAt = washedAt.plus(dryingTime);
        if (!now.isBefore(readyAt)) {
            return new InspectionStart.Ready(readyAt);
        }
        Duration missing = Duration.between(now, readyAt);
        return reasonToStartEarly == null || reasonToStartEarly.isBlank()
                ? new InspectionStart.TooEarly(readyAt, missing)
                : new InspectionStart.Early(reasonToStartEarly.strip(), missing);
    }
}
