package dev.lapwing.returns.application;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * What the desk says of a unit that came back, as sent.
 *
 * @param unit number of the unit
 * @param returnedAt when it came back
 * @param note what was said, up to 20,000 characters; may be empty when marks are given
 * @param language two-letter code, or null to have it detected
 * @param marks places on the roof plan, or null
 * @param reportedBy who told of it, or null
 */
public record ReturnNotice(
        String unit,
        OffsetDateTime returnedAt,
        String note,
        String language,
        Integer odometerKm,
        List<Mark> marks,
        String reportedBy) {

    /** A marked place: x along the length from the front, y across from the left, each 0 to 1. */
    public record Mark(Double x, Double y, String kind) {}
}
