package dev.lapwing.alerts.domain;

import java.time.Duration;

/**
 * How fast the ladder is climbed.
 *
 * @param nextOnDuty from the start of the climb to the second rung
 * @param coordinators from the start to the third
 * @param lastResort from the start to the last
 * @param again between repeats of the last rung
 * @param start how long after acceptance the work may begin before a new climb starts
 */
public record LadderPace(
        Duration nextOnDuty, Duration coordinators, Duration lastResort, Duration again, Duration start) {

    public LadderPace {
        if (nextOnDuty.isNegative()
                || coordinators.compareTo(nextOnDuty) < 0
                || lastResort.compareTo(coordinators) < 0) {
            throw new IllegalArgumentException("each rung must come no earlier than the one before: " + nextOnDuty
                    + ", " + coordinators + ", " + lastResort);
        }
        if (again.compareTo(Duration.ofMinutes(1)) < 0 || start.isNegative()) {
            throw new IllegalArgumentException(
                    "repeats need a minute or more between them and the start no negative time: " + again + ", "
                            + start);
        }
    }

    /** Returns the pace with all waits multiplied, as for rain that is near; the pause between repeats stays a minute or more. */
    public LadderPace times(double factor) {
        Duration quicker = scaled(again, factor);
        return new LadderPace(
                scaled(nextOnDuty, factor),
                scaled(coordinators, factor),
                scaled(lastResort, factor),
                quicker.compareTo(Duration.ofMinutes(1)) < 0 ? Duration.ofMinutes(1) : quicker,
                scaled(start, factor));
    }

    Duration offset(Rung rung) {
        return switch (rung) {
            case TOLD -> Duration.ZERO;
            case NEXT_ON_DUTY -> nextOnDuty;
            case COORDINATORS -> coordinators;
            case LAST_RESORT -> lastResort;
        };
    }

    private static Duration scaled(Duration wait, double factor) {
        return Duration.ofSeconds(Math.round(wait.toSeconds() * factor));
    }
}
