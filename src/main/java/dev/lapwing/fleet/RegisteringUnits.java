package dev.lapwing.fleet;

import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/** Adds units to the register and changes what is known of them. */
@ApplicationScoped
class RegisteringUnits {
    private static final UnitRequest.UsePatternRequest NOTHING_ASKED =
            new UnitRequest.UsePatternRequest(null, null, null);

    @Inject
    Event<UnitSaved> saved;

    @Inject
    UnitChanges changes;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Adds a unit; refuses a number that is taken. */
    @Transactional
    Unit add(UnitRequest request, String by) {
        var unit = new Unit();
        fill(unit, request);
        if (Unit.byNumber(unit.number).isPresent()) {
            throw Refused.conflict("There is a unit " + unit.number + " already");
        }
        Instant now = clock.instant();
        unit.id = ids.next();
        unit.createdAt = now;
        unit.inServiceFrom = unit.depot.dateAt(now);
        unit.persist();
        tell(unit, request, now, by);
        return unit;
    }

    /** Replaces what is known of a unit. */
    @Transactional
    Unit change(String number, UnitRequest request, String by) {
        Unit unit = Unit.require(number);
        UnitSnapshot before = UnitSnapshot.of(unit);
        Instant now = clock.instant();
        if (request.number() != null && !request.number().equals(number)) {
            throw Refused.invalid("number", "is " + number + " and cannot be changed");
        }
        fill(unit, request.withNumber(number));
        changes.write(unit, before, new UnitChanges.Act(now, by, null));
        tell(unit, request, now, by);
        return unit;
    }

    private void tell(Unit unit, UnitRequest request, Instant now, String by) {
        unit.flush();
        var asked = Optional.ofNullable(request.usePattern()).orElse(NOTHING_ASKED);
        saved.fire(new UnitSaved(unit.id, asked.pattern(), asked.reason(), asked.until(), now, by));
    }

    private void fill(Unit unit, UnitRequest request) {
        var errors = new FieldErrors();
        UnitFields.fill(unit, request, LocalDate.now(clock), errors);
        errors.refuseIfAny();
    }
}
