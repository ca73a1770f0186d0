package dev.lapwing.use.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.use.storage.Rental;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.UUID;

/** A rental as it is answered; times are those of the unit's depot. */
@JsonInclude(JsonInclude.Include.NON_NULL)
record RentalAnswer(UUID id, String unit, OffsetDateTime out, OffsetDateTime back, String reference) {
    static RentalAnswer of(Rental rental) {
        ZoneId zone = rental.unit.depot.zoneId();
        return new RentalAnswer(
                rental.id,
                rental.unit.number,
                rental.outAt.atZone(zone).toOffsetDateTime(),
                rental.backAt == null ? null : rental.backAt.atZone(zone).toOffsetDateTime(),
                rental.reference);
    }
}
