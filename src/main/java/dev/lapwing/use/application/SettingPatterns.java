package dev.lapwing.use.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitSaved;
import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.Refused;
import dev.lapwing.use.storage.SetPattern;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.List;

/** Takes down the use pattern that a coordinator sets with a unit. */
@ApplicationScoped
class SettingPatterns {
    private static final int BEFORE_THE_WORK_IS_PLANNED = 100;

    @Inject
    KeepingPatterns keeping;

    /** Sets the pattern when one was sent, and else leaves what was set before. */
    @Transactional(Transactional.TxType.MANDATORY)
    void unitSaved(@Observes @Priority(BEFORE_THE_WORK_IS_PLANNED) UnitSaved saved) {
        var asked = new PatternAsked(saved.pattern(), saved.patternReason(), saved.patternUntil());
        if (!asked.isSomething()) {
            return;
        }
        List<FieldError> wrong = asked.errors("usePattern.pattern", "usePattern.reason", "usePattern.until");
        if (!wrong.isEmpty()) {
            throw Refused.invalid(wrong);
        }
        Unit unit = Unit.findById(saved.unitId());
        SetPattern before = SetPattern.findById(saved.unitId());
        if (before != null && asked.isSameAs(before)) {
            return;
        }
        boolean over = saved.patternUntil() != null && saved.patternUntil().isBefore(unit.depot.dateAt(saved.at()));
        if (over) {
            throw Refused.invalid("usePattern.until", "lies in the past");
        }
        keeping.set(unit, asked, before, saved.at(), saved.by());
    }
}
