package dev.lapwing.use.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitChanges;
import dev.lapwing.platform.Ids;
import dev.lapwing.use.domain.PatternOverride;
import dev.lapwing.use.storage.PastPattern;
import dev.lapwing.use.storage.SetPattern;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;

/** Keeps the pattern that was set for a unit, and for how long each one counted. */
@ApplicationScoped
class KeepingPatterns {
    private static final String FIELD = "usePattern";

    @Inject
    UnitChanges changes;

    @Inject
    Ids ids;

    /**
     * Stores what was asked; what is set already and is the same keeps its date and its person.
     *
     * @param before what was set before, or null
     */
    @Transactional(Transactional.TxType.MANDATORY)
    void set(Unit unit, PatternAsked asked, SetPattern before, Instant now, String by) {
        if (before != null && asked.isSameAs(before)) {
            return;
        }
        String old = before == null ? null : words(before);
        if (before != null) {
            keepPast(unit, before, now);
        }
        SetPattern set = before == null ? new SetPattern() : before;
        set.unitId = unit.id;
        asked.fill(set);
        set.setBy = by;
        set.setAt = now;
        set.persist();
        write(unit, new UnitChanges.Field(FIELD, old, words(set)), new UnitChanges.Act(now, by, set.reason));
    }

    /** Takes away what was set: from now on the log says how the unit is used. */
    @Transactional(Transactional.TxType.MANDATORY)
    void end(Unit unit, SetPattern set, Instant now, String by, String reason) {
        keepPast(unit, set, now);
        write(unit, new UnitChanges.Field(FIELD, words(set), null), new UnitChanges.Act(now, by, reason));
        set.delete();
    }

    /** Keeps the days before today on which a pattern counted; one set today has not counted yet. */
    private void keepPast(Unit unit, SetPattern set, Instant now) {
        PatternOverride counted = set.override(unit.depot.zoneId());
        LocalDate yesterday = unit.depot.dateAt(now).minusDays(1);
        LocalDate last = counted.until().isBefore(yesterday) ? counted.until() : yesterday;
        if (last.isBefore(counted.from())) {
            return;
        }
        var past = new PastPattern();
        past.id = ids.next();
        past.unitId = unit.id;
        past.pattern = set.pattern;
        past.reason = set.reason;
        past.setBy = set.setBy;
        past.setFrom = counted.from();
        past.setUntil = last;
        past.persist();
    }

    private void write(Unit unit, UnitChanges.Field field, UnitChanges.Act act) {
        changes.write(unit.id, field, act);
    }

    private static String words(SetPattern set) {
        return set.pattern.word() + (set.setUntil == null ? "" : " until " + set.setUntil);
    }
}
