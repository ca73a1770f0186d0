package dev.lapwing.fleet;

import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;

/** Takes units out of service, sells them, brings them back, and notes that one has a new roof. */
@ApplicationScoped
class ChangingService {
    private static final int LONGEST_REASON = 500;

    @Inject
    UnitChanges changes;

    @Inject
    Event<UnitSaved> saved;

    @Inject
    Clock clock;

    /** Changes whether a unit is in service; refuses a state it has already. */
    @Transactional
    Unit change(String number, ServiceRequest request, String by) {
        Unit unit = Unit.require(number);
        Instant now = clock.instant();
        LocalDate today = unit.depot.dateAt(now);
        var errors = new FieldErrors();
        errors.present(request.state(), "state");
        ServiceState state =
                errors.word(ServiceState.class, request.state(), "state").orElse(null);
        reason(request.reason(), errors);
        LocalDate on = request.on() == null ? today : request.on();
        UnitFields.serviceDay(on, "on", errors);
        errors.check(!on.isBefore(unit.inServiceFrom), "on", "lies before the unit is in service");
        errors.refuseIfAny();
        UnitSnapshot before = UnitSnapshot.of(unit);
        if (state == ServiceState.IN_SERVICE) {
            comeBack(unit, on, today);
        } else {
            leave(unit, state == ServiceState.SOLD, on, today);
            unit.outOfServiceWhy = request.reason().strip();
        }
        tell(unit, before, new UnitChanges.Act(now, by, request.reason().strip()));
        return unit;
    }

    /** A unit that is away already and is then sold has left on the day it left. */
    private static void leave(Unit unit, boolean sold, LocalDate on, LocalDate today) {
        boolean away = unit.outOfServiceOn != null && !unit.outOfServiceOn.isAfter(today);
        if (away && (unit.sold || !sold)) {
            throw Refused.conflict("The unit is " + unit.serviceState(today).word() + " already");
        }
        unit.outOfServiceOn = away ? unit.outOfServiceOn : on;
        unit.sold = sold;
    }

    private static void comeBack(Unit unit, LocalDate on, LocalDate today) {
        if (unit.outOfServiceOn == null) {
            throw Refused.conflict("The unit is in service already");
        }
        boolean left = !unit.outOfServiceOn.isAfter(today);
        if (left && on.isBefore(unit.outOfServiceOn)) {
            throw Refused.invalid("on", "lies before the unit left on " + unit.outOfServiceOn);
        }
        if (left) {
            unit.awaySince = unit.outOfServiceOn;
            unit.inServiceFrom = on;
        }
        unit.outOfServiceOn = null;
        unit.outOfServiceWhy = null;
        unit.sold = false;
    }

    /** Puts a new roof on a unit; what was known of the old one is replaced as a whole. */
    @Transactional
    Unit replaceRoof(String number, RoofReplaced replaced, String by) {
        Unit unit = Unit.require(number);
        Instant now = clock.instant();
        var errors = new FieldErrors();
        UnitSnapshot before = UnitSnapshot.of(unit);
        if (errors.present(replaced.roof(), "roof")) {
            UnitFields.roof(unit.roof, replaced.roof(), unit.depot.dateAt(now), errors);
        }
        if (errors.present(replaced.on(), "on")) {
            unit.roof.installedOn = UnitFields.past(replaced.on(), unit.depot.dateAt(now), "on", errors);
        }
        reason(replaced.reason(), errors);
        errors.refuseIfAny();
        tell(unit, before, new UnitChanges.Act(now, by, replaced.reason().strip()));
        return unit;
    }

    private static void reason(String reason, FieldErrors errors) {
        if (errors.present(reason, "reason")) {
            errors.atMost(reason, LONGEST_REASON, "reason");
            errors.check(reason.indexOf('\0') < 0, "reason", "holds a NUL character");
        }
    }

    private void tell(Unit unit, UnitSnapshot before, UnitChanges.Act act) {
        changes.write(unit, before, act);
        unit.flush();
        saved.fire(UnitSaved.withoutPattern(unit.id, act.at(), act.by()));
    }
}
