package dev.lapwing.care.domain;

import dev.lapwing.use.domain.UsePattern;
import java.time.LocalDate;

/** Finds the routine work that interval rules ask for: of all rules that fit the unit, the one due first. */
final class IntervalWork {
    private final CareRules rules;

    IntervalWork(CareRules rules) {
        this.rules = rules;
    }

    /** Returns the work of this kind, or null when no rule asks for it. */
    Wanted next(UnitFacts facts, TaskKind kind, UsePattern caredForAs, LocalDate floor, LocalDate today) {
        Inspected inspected = null;
        Wanted earliest = null;
        for (CareRule.Interval rule : rules.intervals()) {
            if (rule.kind() == kind
                    && rule.pattern() == caredForAs
                    && rule.when().mayHoldFor(facts.roof())) {
                inspected = inspected == null ? Inspected.by(facts, kind, today) : inspected;
                Wanted wanted = by(rule, facts, inspected, floor);
                earliest = earliest == null || wanted.due().isBefore(earliest.due()) ? wanted : earliest;
            }
        }
        return earliest;
    }

    private Wanted by(CareRule.Interval rule, UnitFacts facts, Inspected inspected, LocalDate floor) {
        var count = IntervalCount.through(inspected, rule.every(), rules.combineDays());
        LocalDate due = later(later(count.next(), floor), rule.when().holdsFrom(facts.roof()));
        String cause = useOf(facts) + ", " + lastOf(count, inspected) + ", " + rule.every();
        return Wanted.of(
                rule.kind(), TaskOrigin.INTERVAL, due, rule.opensBefore(), rule.lateAfter(), cause, rule.ref());
    }

    private static String useOf(UnitFacts facts) {
        return switch (facts.use().pattern()) {
            case UNKNOWN -> "use unknown, cared for as full-time";
            case SEASONAL -> facts.season() == null ? "seasonal without a season, cared for as full-time" : "seasonal";
            case FULL_TIME -> "full-time";
        };
    }

    private static String lastOf(IntervalCount count, Inspected inspected) {
        if (count.last() == null) {
            return "nothing on record";
        }
        boolean roof = inspected.done().isEmpty();
        return (roof ? "new roof on " : "last done ") + Wording.day(count.last());
    }

    static LocalDate later(LocalDate one, LocalDate other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return one.isAfter(other) ? one : other;
    }
}
