package dev.lapwing.use.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.fleet.Storage;
import dev.lapwing.use.storage.Stay;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.UUID;

/** A stay in storage or in the workshop as it is answered; times are those of the unit's depot. */
@JsonInclude(JsonInclude.Include.NON_NULL)
record StayAnswer(
        UUID id,
        String unit,
        String kind,
        OffsetDateTime from,
        OffsetDateTime until,
        Storage place,
        String note,
        String by) {
    static StayAnswer of(Stay stay) {
        ZoneId zone = stay.unit.depot.zoneId();
        return new StayAnswer(
                stay.id,
                stay.unit.number,
                stay.kind.word(),
                stay.fromAt.atZone(zone).toOffsetDateTime(),
                stay.untilAt == null ? null : stay.untilAt.atZone(zone).toOffsetDateTime(),
                stay.place,
                stay.note,
                stay.notedBy);
    }
}
