package dev.lapwing.care;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Depot;
import dev.lapwing.fleet.DepotSaved;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.FleetFixture;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;

/** A depot of its own for a test of the sweep, so that units of other tests do not matter. */
@ApplicationScoped
public class SweepDepot {
    @Inject
    FleetFixture fleet;

    @Inject
    Event<DepotSaved> saved;

    /** Adds a depot with so many units, numbered from 1 after the depot's code. */
    @Transactional
    public void open(String code, int units) {
        fleet.people();
        var depot = new Depot();
        depot.code = code;
        depot.name = "Saltmarsh Point " + code;
        depot.zone = "Europe/Oslo";
        depot.seasonOpens = "04-01";
        depot.seasonCloses = "10-31";
        depot.persist();
        for (int i = 1; i <= units; i++) {
            fleet.unit(number(code, i));
            Unit.require(number(code, i)).depot = depot;
        }
        Depot.flush();
        saved.fire(new DepotSaved(code, depot.seasonOpens, depot.seasonCloses, false));
    }

    public static String number(String code, int unit) {
        return "%s-%05d".formatted(code, unit);
    }

    /** Gives a unit a season that no rule can read, as a fault in the database would, or takes it away again. */
    @Transactional
    public void breakUnit(String number, boolean broken) {
        Unit.update("seasonOpens = ?1, seasonCloses = ?1 where number = ?2", broken ? "13-77" : null, number);
    }

    @Transactional
    public long openTasks(String number) {
        return CareTask.count("unit.number = ?1 and openKey is not null", number);
    }
}
