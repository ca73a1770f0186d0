package dev.lapwing.photos.domain;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/**
 * The only things that are wanted of what a camera notes in a picture.
 *
 * @param orientation how the camera was held, 1 to 8 as Exif numbers it; 1 is upright
 * @param takenAt when it was taken by the camera's clock, or null
 * @param offset the offset of that clock, or null when the camera did not note it
 */
record CameraNotes(int orientation, LocalDateTime takenAt, ZoneOffset offset) {
    static final CameraNotes NONE = new CameraNotes(1, null, null);

    /** Returns the time taken, or null; a clock without offset is taken to show the time of the zone. */
    Instant takenIn(ZoneId zone) {
        if (takenAt == null) {
            return null;
        }
        return takenAt.atZone(offset == null ? zone : offset).toInstant();
    }
}
