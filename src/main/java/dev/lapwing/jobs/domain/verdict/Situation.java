package dev.lapwing.jobs.domain.verdict;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What else matters when findings are judged.
 *
 * @param inspectedAt the moment of the inspection
 * @param rainHours hours from then until likely rain, 0 or more; null when there is no forecast
 * @param goesOutAt when the unit goes out next, or null when nothing is booked
 * @param membraneConfirmed whether the roof's membrane system is known and confirmed
 */
public record Situation(Instant inspectedAt, Double rainHours, Instant goesOutAt, boolean membraneConfirmed) {
    public Situation {
        if (rainHours != null && !(rainHours >= 0)) {
            throw new IllegalArgumentException("hours until rain are 0 or more, were " + rainHours);
        }
    }

    boolean pressed(RuleSettings settings) {
        boolean rain = rainHours == null
                ? settings.unknownRainIsNear()
                : rainHours * 3_600 <= settings.rainNear().toSeconds();
        boolean goesOut = goesOutAt != null && !goesOutAt.isAfter(inspectedAt.plus(settings.goesOutNear()));
        return rain || goesOut;
    }

    /** Returns when work of an urgency is due, or empty when none is wanted. */
    Optional<Instant> due(Urgency urgency, RuleSettings settings) {
        return switch (urgency) {
            case NONE -> Optional.empty();
            case ROUTINE -> Optional.of(inspectedAt.plus(settings.routineWithin()));
            case URGENT ->
                Stream.of(
                                rainAt(),
                                Optional.ofNullable(goesOutAt),
                                Optional.of(inspectedAt.plus(settings.urgentWithin())))
                        .flatMap(Optional::stream)
                        .min(Instant::compareTo)
                        .map(due -> due.isBefore(inspectedAt) ? inspectedAt : due);
            case AT_ONCE -> Optional.of(inspectedAt);
        };
    }

    private Optional<Instant> rainAt() {
        return Optional.ofNullable(rainHours)
                .map(hours -> inspectedAt.plus(Duration.ofSeconds((long) (hours * 3_600))));
    }
}
