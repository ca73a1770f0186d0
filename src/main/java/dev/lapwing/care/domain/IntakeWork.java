package dev.lapwing.care.domain;

import dev.lapwing.use.domain.DaySpan;
import java.time.LocalDate;

/** Finds the first inspection of a unit that is new to the fleet or was long away. */
final class IntakeWork {
    private final CareRules rules;

    IntakeWork(CareRules rules) {
        this.rules = rules;
    }

    /** Returns the intake inspection, or null when none is needed or it is done. */
    Wanted next(UnitFacts facts) {
        CareRule.Intake rule = rules.intake();
        Service service = facts.service();
        if (!service.newOrAwayLonger(rule.awayLongerThan()) || inspectedSince(facts, service.from())) {
            return null;
        }
        LocalDate firstOut = firstOut(facts, service.from());
        LocalDate latest = service.from().plusDays(rule.within());
        boolean rentedFirst = firstOut != null && !firstOut.minusDays(1).isAfter(latest);
        LocalDate due = rentedFirst ? IntervalWork.later(firstOut.minusDays(1), service.from()) : latest;
        String cause = (service.awaySince() == null ? "new to the fleet on " : "back after long away on ")
                + Wording.day(service.from())
                + (rentedFirst ? ", first rental " + Wording.day(firstOut) : "");
        int opensBefore = (int) (due.toEpochDay() - service.from().toEpochDay());
        return Wanted.of(TaskKind.INSPECTION, TaskOrigin.INTAKE, due, opensBefore, rule.lateAfter(), cause, rule.ref());
    }

    private boolean inspectedSince(UnitFacts facts, LocalDate from) {
        LocalDate earliest = from.minusDays(rules.combineDays());
        for (DoneWork work : facts.done()) {
            if (work.kind().fullInspection() && !work.on().isBefore(earliest)) {
                return true;
            }
        }
        return false;
    }

    private static LocalDate firstOut(UnitFacts facts, LocalDate from) {
        LocalDate first = null;
        for (DaySpan rental : facts.rentals()) {
            boolean counts = !rental.first().isBefore(from);
            first = counts && (first == null || rental.first().isBefore(first)) ? rental.first() : first;
        }
        return first;
    }
}
