package dev.lapwing.care.web;

import dev.lapwing.care.domain.HoldCause;
import dev.lapwing.care.domain.HoldState;
import dev.lapwing.care.storage.Hold;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.UUID;

/** A hold as it is answered; times are those of the unit's depot. */
record HoldAnswer(
        UUID id,
        String unit,
        HoldCause cause,
        UUID causeId,
        String words,
        HoldState state,
        OffsetDateTime openedAt,
        String openedBy,
        OffsetDateTime releasedAt,
        String releasedBy,
        String statement,
        String ground) {

    static HoldAnswer of(Hold hold) {
        ZoneId zone = hold.unit.depot.zoneId();
        return new HoldAnswer(
                hold.id,
                hold.unit.number,
                hold.cause,
                hold.causeId,
                hold.words,
                hold.state,
                hold.openedAt.atZone(zone).toOffsetDateTime(),
                hold.openedBy,
                hold.releasedAt == null ? null : hold.releasedAt.atZone(zone).toOffsetDateTime(),
                hold.releasedBy,
                hold.statement,
                hold.ground);
    }
}
