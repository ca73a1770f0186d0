package dev.lapwing.use.domain;

import java.time.Instant;
import java.util.Objects;

/**
 * A time in which a unit is neither out nor in the workshop, so that its roof can be worked on.
 *
 * @param from when it is back
 * @param until when it goes again, null while nothing is booked
 */
public record YardGap(Instant from, Instant until) {
    public YardGap {
        Objects.requireNonNull(from, "from");
        if (until != null && !until.isAfter(from)) {
            throw new IllegalArgumentException("a gap must last: " + from + " to " + until);
        }
    }

    public boolean contains(Instant moment) {
        return !moment.isBefore(from) && (until == null || moment.isBefore(until));
    }
}
