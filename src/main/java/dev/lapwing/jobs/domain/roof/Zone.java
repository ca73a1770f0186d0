package dev.lapwing.jobs.domain.roof;

import dev.lapwing.jobs.domain.Words;
import java.util.Arrays;
import java.util.List;
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

    /** Returns the nine fields without any object, from the front left to the rear right. */
    public static List<Zone> fields() {
        return Arrays.stream(Along.values())
                .flatMap(along -> Arrays.stream(Across.values()).map(across -> new Zone(along, across, null)))
                .toList();
    }

    /** Returns the middle of a field by its name; that of the roof when there is no such field. */
    static Point middleOf(String field) {
        return fields().stream()
                .filter(zone -> zone.field().equals(Words.key(field)))
                .findFirst()
                .map(zone -> new Point((zone.along.ordinal() + 0.5) / 3, (zone.across.ordinal() + 0.5) / 3))
                .orElse(new Point(0.5, 0.5));
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
