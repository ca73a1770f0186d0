package dev.lapwing.fleet;

import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;

/** Adds units to the register and changes what is known of them. */
@ApplicationScoped
class RegisteringUnits {
    private static final Pattern NUMBER = Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} ._-]{0,38}[\\p{L}\\p{N}])?");
    private static final BigDecimal SHORTEST = BigDecimal.ONE;
    private static final BigDecimal LONGEST = BigDecimal.valueOf(25);
    private static final BigDecimal HIGHEST = BigDecimal.valueOf(5);
    private static final UnitRequest.UsePatternRequest NOTHING_ASKED =
            new UnitRequest.UsePatternRequest(null, null, null);

    @Inject
    Event<UnitSaved> saved;

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
        if (request.number() != null && !request.number().equals(number)) {
            throw Refused.invalid("number", "is " + number + " and cannot be changed");
        }
        fill(unit, request.withNumber(number));
        tell(unit, request, clock.instant(), by);
        return unit;
    }

    private void tell(Unit unit, UnitRequest request, Instant now, String by) {
        unit.flush();
        var asked = Optional.ofNullable(request.usePattern()).orElse(NOTHING_ASKED);
        saved.fire(new UnitSaved(unit.id, asked.pattern(), asked.reason(), asked.until(), now, by));
    }

    private void fill(Unit unit, UnitRequest request) {
        var errors = new FieldErrors();
        if (errors.present(request.number(), "number")) {
            errors.check(
                    NUMBER.matcher(request.number()).matches(),
                    "number",
                    "must be 1 to 40 letters, digits, spaces, dots, hyphens or underscores");
        }
        unit.number = request.number();
        unit.vin = vin(request.vin(), errors);
        errors.present(request.kind(), "kind");
        unit.kind = errors.word(UnitKind.class, request.kind(), "kind").orElse(null);
        unit.depot = depot(request.depot(), errors);
        unit.lengthMetres = metres(request.lengthMetres(), LONGEST, "lengthMetres", errors);
        unit.heightMetres = metres(request.heightMetres(), HIGHEST, "heightMetres", errors);
        unit.storage = errors.word(Storage.class, request.storage(), "storage").orElse(Storage.OUTSIDE);
        unit.roof = errors.present(request.roof(), "roof") ? roof(request.roof(), errors) : null;
        errors.refuseIfAny();
    }

    private static String vin(String typed, FieldErrors errors) {
        if (typed == null || typed.isBlank()) {
            return null;
        }
        String vin = Vin.normalised(typed);
        errors.atMost(vin, 40, "vin");
        return vin;
    }

    private static Depot depot(String code, FieldErrors errors) {
        if (!errors.present(code, "depot")) {
            return null;
        }
        Depot depot = Depot.findById(code);
        errors.check(depot != null, "depot", "is not the code of a depot");
        return depot;
    }

    private static BigDecimal metres(BigDecimal value, BigDecimal most, String field, FieldErrors errors) {
        if (errors.present(value, field)) {
            errors.check(
                    value.compareTo(SHORTEST) >= 0 && value.compareTo(most) <= 0,
                    field,
                    "must be from " + SHORTEST + " to " + most + " metres");
        }
        return value;
    }

    private Roof roof(UnitRequest.RoofRequest request, FieldErrors errors) {
        var roof = new Roof();
        errors.present(request.surface(), "roof.surface");
        roof.surface =
                errors.word(Surface.class, request.surface(), "roof.surface").orElse(null);
        roof.footing =
                errors.word(Footing.class, request.footing(), "roof.footing").orElse(Footing.UNKNOWN);
        roof.membraneSystem = text(request.membraneSystem(), "roof.membraneSystem", errors);
        roof.confirmedBy = text(request.confirmedBy(), "roof.confirmedBy", errors);
        roof.sealant = text(request.sealant(), "roof.sealant", errors);
        var today = LocalDate.now(clock);
        roof.confirmedOn = request.confirmedOn();
        errors.check(notAfter(request.confirmedOn(), today), "roof.confirmedOn", "lies in the future");
        roof.installedOn = request.installedOn();
        errors.check(notAfter(request.installedOn(), today), "roof.installedOn", "lies in the future");
        return roof;
    }

    private static String text(String typed, String field, FieldErrors errors) {
        errors.atMost(typed, 100, field);
        return typed == null || typed.isBlank() ? null : typed.strip();
    }

    /** Allows a day of grace, since the sender's date may be ahead of the service's. */
    private static boolean notAfter(LocalDate date, LocalDate today) {
        return date == null || !date.isAfter(today.plusDays(1));
    }
}
