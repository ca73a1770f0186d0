package dev.lapwing.fleet;

import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;

/** Adds depots and changes what is known of them. */
@ApplicationScoped
class KeepingDepots {
    @Inject
    Event<DepotSaved> saved;

    @Inject
    Clock clock;

    /** Adds a depot; refuses a code that is taken. */
    @Transactional
    Depot add(DepotRequest request) {
        check(request);
        if (Depot.findById(request.code()) != null) {
            throw Refused.conflict("There is a depot " + request.code() + " already");
        }
        var depot = new Depot();
        depot.code = request.code();
        DepotFields.fill(depot, request);
        depot.persist();
        tell(depot, false);
        return depot;
    }

    /** Replaces what is known of a depot. */
    @Transactional
    Depot change(String code, DepotRequest request) {
        Depot depot = Depot.require(code);
        if (request.code() != null && !request.code().equals(code)) {
            throw Refused.invalid("code", "is " + code + " and cannot be changed");
        }
        check(request.withCode(code));
        String season = depot.season();
        String zone = depot.zone;
        DepotFields.fill(depot, request);
        boolean otherSeason = !depot.season().equals(season);
        if (otherSeason) {
            Unit.seasonChangedAt(code, depot.dateAt(clock.instant()));
        }
        tell(depot, otherSeason || !depot.zone.equals(zone));
        return depot;
    }

    private static void check(DepotRequest request) {
        var errors = new FieldErrors();
        DepotFields.check(request, errors);
        errors.refuseIfAny();
    }

    private void tell(Depot depot, boolean datesChanged) {
        depot.flush();
        saved.fire(new DepotSaved(depot.code, depot.seasonOpens, depot.seasonCloses, datesChanged));
    }
}
