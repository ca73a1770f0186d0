package dev.lapwing.jobs.domain.sheet;

import java.time.Duration;
import java.time.Instant;

/** Whether looking and feeling may begin. */
public sealed interface InspectionStart {
    /** The roof is washed and has had its drying time. */
    record Ready(Instant since) implements InspectionStart {}

    /**
     * It begins before the drying time is over, for a stated reason that stays on the sheet.
     *
     * @param missing what was left of the drying time
     */
    record Early(String reason, Duration missing) implements InspectionStart {}

    /** The drying time is not over and no reason was given. */
    record TooEarly(Instant readyAt, Duration missing) implements InspectionStart {}

    /** The roof is too dirty to see, or the wash is not recorded; an early start is no way around it. */
    record WashFirst(String because) implements InspectionStart {}
}
