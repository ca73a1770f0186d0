package dev.lapwing.alerts.domain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Which steps of a climb are to be taken when. */
public final class Ladder {
    /**
     * A step of a climb.
     *
     * @param turn 0 the first time, then counting the repeats of the last rung
     * @param at when it is due, or was taken
     */
    public record Step(Rung rung, int turn, Instant at) {}

    private Ladder() {}

    /**
     * Returns the next step of each rung that was not taken, in order of time, and the next repeat of the last rung.
     * What was missed while the service was down is due at once and once: repeats that fell into that time are one.
     *
     * @param taken the steps already taken in this climb
     */
    public static List<Step> ahead(Climb climb, List<Step> taken, LadderPace pace) {
        List<Step> ahead = new ArrayList<>();
        for (Rung rung : Rung.values()) {
            Step last = last(rung, taken);
            if (last == null) {
                ahead.add(new Step(rung, 0, climb.since().plus(pace.offset(rung))));
            } else if (rung == Rung.LAST_RESORT) {
                ahead.add(new Step(rung, last.turn() + 1, last.at().plus(pace.again())));
            }
        }
        ahead.sort(Comparator.comparing(Step::at).thenComparing(Step::rung));
        return ahead;
    }

    /** Returns the steps whose time has come. */
    public static List<Step> due(Climb climb, List<Step> taken, LadderPace pace, Instant now) {
        return ahead(climb, taken, pace).stream()
                .filter(step -> !step.at().isAfter(now))
                .toList();
    }

    private static Step last(Rung rung, List<Step> taken) {
        return taken.stream()
                .filter(step -> step.rung() == rung)
                .max(Comparator.comparingInt(Step::turn))
                .orElse(null);
    }
}
