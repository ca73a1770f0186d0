package dev.lapwing.demo;

import dev.lapwing.fleet.Unit;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/**
 * A unit while its past is made up.
 *
 * @param unit the stored unit
 * @param row what the table says of it
 * @param rentals when it was out
 * @param techs sign-in names of the techs of its depot
 * @param now the moment up to which the past reaches
 */
record DemoUnit(Unit unit, DemoFiles.Row row, RentalYear rentals, List<String> techs, Instant now) {
    ZoneId zone() {
        return unit.depot.zoneId();
    }

    LocalDate today() {
        return unit.depot.dateAt(now);
    }

    /** Returns a tech of the depot; they take turns. */
    String tech(int turn) {
        return techs.get(Math.floorMod(unit.number.hashCode() + turn, techs.size()));
    }

    boolean seasonal() {
        return "seasonal".equals(row.text("rents"));
    }
}
