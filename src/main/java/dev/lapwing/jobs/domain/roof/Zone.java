package dev.lapwing.jobs.domain.roof;

import dev.lapwing.jobs.domain.Words;
import java.util.Optional;

/**
 * Where a point lies: one of nine fields, and what is near it.
 *
 * @param near the nearest object, or null when none is near
 */
public record Zone(Along along, Across across, PlacedObject near) {
    /** Thirds of the length. */
    public enum Along {
        FRONT,
        MIDDLE,
        REAR
    }

    /** Thirds of the width. */
    public enum Across {
        LEFT,
        CENTRE,
        RIGHT
    }

    public Optional<PlacedObject> nearest() {
        return Optional.ofNullable(near);
    }

    /** Returns the field, such as {@code front-left}. */
    public String field() {
        return Words.of(along) + "-" + Words.of(across);
    }

    /** Returns the name to store with a finding, such as "front-left, front vent". */
    public String name() {
        return near == null ? field() : field() + ", " + near.name();
    }
}
