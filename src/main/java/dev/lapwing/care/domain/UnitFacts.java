package dev.lapwing.care.domain;

import dev.lapwing.use.domain.DaySpan;
import dev.lapwing.use.domain.Season;
import dev.lapwing.use.domain.UseInForce;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;

/**
 * All the engine knows of one unit. The order of the lists does not matter.
 *
 * @param unit number of the unit
 * @param roof its roof
 * @param service when it is in service
 * @param use the pattern that counts
 * @param zone zone of its depot
 * @param season its own season or its depot's, null if neither has one
 * @param seasonSince first day this season counted for the unit, null if it always did; a move to another depot or new
 *     season days set it, and no season work is due before it
 * @param rentals days out, past and booked, of the present season at least; only season work and intake read them
 * @param done work signed off, at least from the last routine or intake inspection on; for rules in months 13 months
 * @param open tasks neither done nor called off
 * @param events events neither inspected nor settled by a person
 */
public record UnitFacts(
        String unit,
        Roof roof,
        Service service,
        UseInForce use,
        ZoneId zone,
        Season season,
        LocalDate seasonSince,
        List<DaySpan> rentals,
        List<DoneWork> done,
        List<OpenTask> open,
        List<CareEvent> events) {
    public UnitFacts {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(roof, "roof");
        Objects.requireNonNull(service, "service");
        Objects.requireNonNull(use, "use");
        Objects.requireNonNull(zone, "zone");
        rentals = List.copyOf(rentals);
        done = List.copyOf(done);
        open = List.copyOf(open);
        events = List.copyOf(events);
    }
}
