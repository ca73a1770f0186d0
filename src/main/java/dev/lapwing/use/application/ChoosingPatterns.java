package dev.lapwing.use.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitSaved;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import dev.lapwing.use.storage.SetPattern;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;

/** Sets the pattern of a unit on its own, or takes away what was set, so that the log says it again. */
@ApplicationScoped
public class ChoosingPatterns {
    private static final int LONGEST_REASON = 500;

    @Inject
    KeepingPatterns keeping;

    @Inject
    Event<UnitSaved> saved;

    @Inject
    Clock clock;

    /** Sets a pattern up to a last day, or without end when that is null. */
    @Transactional
    public void set(String number, String pattern, String reason, LocalDate until, String by) {
        var errors = new FieldErrors();
        errors.present(pattern, "usePattern.pattern");
        errors.present(reason, "usePattern.reason");
        errors.refuseIfAny();
        Unit unit = Unit.require(number);
        saved.fire(new UnitSaved(unit.id, pattern, reason, until, clock.instant(), by));
    }

    /** Takes away what was set; refuses when nothing is. */
    @Transactional
    public void end(String number, String reason, String by) {
        var errors = new FieldErrors();
        if (errors.present(reason, "usePattern.reason")) {
            errors.atMost(reason, LONGEST_REASON, "usePattern.reason");
            errors.check(reason.indexOf('\0') < 0, "usePattern.reason", "holds a NUL character");
        }
        errors.refuseIfAny();
        Unit unit = Unit.require(number);
        SetPattern set = SetPattern.findById(unit.id);
        if (set == null) {
            throw Refused.conflict("No pattern is set; the log says how the unit is used");
        }
        Instant now = clock.instant();
        keeping.end(unit, set, now, by, reason.strip());
        SetPattern.flush();
        saved.fire(UnitSaved.withoutPattern(unit.id, now, by));
    }
}
