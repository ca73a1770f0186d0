package dev.lapwing.use.application;

import dev.lapwing.fleet.UnitSaved;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.use.domain.UsePattern;
import dev.lapwing.use.storage.SetPattern;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.Transactional;
import java.util.Map;

/** Takes down the use pattern that a coordinator sets with a unit. */
@ApplicationScoped
class SettingPatterns {
    private static final int LONGEST_REASON = 500;
    private static final Map<String, UsePattern> PATTERNS =
            Map.of(UsePattern.FULL_TIME.word(), UsePattern.FULL_TIME, UsePattern.SEASONAL.word(), UsePattern.SEASONAL);
    private static final int BEFORE_THE_WORK_IS_PLANNED = 100;

    /** Sets the pattern when one was sent, and else leaves what was set before. */
    @Transactional(Transactional.TxType.MANDATORY)
    void unitSaved(@Observes @Priority(BEFORE_THE_WORK_IS_PLANNED) UnitSaved saved) {
        if (saved.pattern() == null && saved.patternReason() == null) {
            return;
        }
        check(saved);
        SetPattern before = SetPattern.findById(saved.unitId());
        SetPattern set = before == null ? new SetPattern() : before;
        set.unitId = saved.unitId();
        set.pattern = PATTERNS.get(saved.pattern());
        set.reason = saved.patternReason().strip();
        set.setBy = saved.by();
        set.setAt = saved.at();
        set.setUntil = saved.patternUntil();
        set.persist();
    }

    private static void check(UnitSaved saved) {
        var errors = new FieldErrors();
        if (errors.present(saved.pattern(), "usePattern.pattern")) {
            errors.check(
                    PATTERNS.containsKey(saved.pattern()), "usePattern.pattern", "must be one of full-time, seasonal");
        }
        if (errors.present(saved.patternReason(), "usePattern.reason")) {
            errors.atMost(saved.patternReason(), LONGEST_REASON, "usePattern.reason");
        }
        errors.refuseIfAny();
    }
}
