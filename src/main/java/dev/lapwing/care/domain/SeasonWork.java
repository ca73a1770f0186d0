package dev.lapwing.care.domain;

import dev.lapwing.use.domain.DaySpan;
import dev.lapwing.use.domain.Season;
import java.time.LocalDate;
import java.util.List;

/**
 * Finds the opening or closing work a seasonal unit needs next: the first one, season after season, that no inspection
 * has served yet. It depends on what was done, not on what was planned, so it comes out the same however often and
 * however late one asks.
 */
final class SeasonWork {
    /** An opening served at the very first day leaves the closing at least this long to come. */
    static final int SHORTEST_OPEN_DAYS = 30;

    private final CareRules rules;

    SeasonWork(CareRules rules) {
        this.rules = rules;
    }

    /**
     * Returns the next season work.
     *
     * @param floor first day in service with seasonal care and this season; nothing is due before it
     */
    Wanted next(UnitFacts facts, LocalDate floor, LocalDate today) {
        Season season = facts.season();
        Inspected inspected = Inspected.by(facts, TaskKind.INSPECTION, today);
        LocalDate start = IntervalWork.later(inspected.last(), floor);
        int year = season.latestOpenedBy(start).first().getYear();
        while (true) {
            DaySpan run = season.openingIn(year);
            Wanted opening = opening(facts, run, floor, inspected);
            if (opening != null) {
                return opening;
            }
            Wanted closing = closing(facts, run, floor, today, inspected);
            if (closing != null) {
                return closing;
            }
            year++;
        }
    }

    private Wanted opening(UnitFacts facts, DaySpan run, LocalDate floor, Inspected inspected) {
        CareRule.Opening rule = rules.opening();
        LocalDate firstOut = firstOut(facts.rentals(), run.first().minusDays(rule.earlyRentalDays()), run.first());
        LocalDate due = firstOut == null ? run.first() : firstOut.minusDays(1);
        boolean past = run.last().isBefore(floor);
        if (past || served(inspected, TaskOrigin.SEASON_OPENING, due, run)) {
            return null;
        }
        String cause = "seasonal, season opens " + Wording.day(run.first())
                + (firstOut == null ? "" : ", first rental " + Wording.day(firstOut));
        return Wanted.of(
                TaskKind.INSPECTION,
                TaskOrigin.SEASON_OPENING,
                IntervalWork.later(due, floor),
                rule.opensBefore(),
                rule.lateAfter(),
                cause,
                rule.ref());
    }

    private Wanted closing(UnitFacts facts, DaySpan run, LocalDate floor, LocalDate today, Inspected inspected) {
        CareRule.Closing rule = rules.closing();
        LocalDate base = closingBase(facts.rentals(), run, today);
        LocalDate due = base.plusDays(rule.within());
        if (due.isBefore(floor) || served(inspected, TaskOrigin.SEASON_CLOSING, due, run)) {
            return null;
        }
        String cause = "seasonal, "
                + (base.equals(run.last()) ? "season closes " : "last return of the season, counted from ")
                + Wording.day(base) + ", " + Wording.days(rule.within());
        return Wanted.of(
                TaskKind.INSPECTION,
                TaskOrigin.SEASON_CLOSING,
                due,
                rule.opensBefore(),
                rule.lateAfter(),
                cause,
                rule.ref());
    }

    /**
     * Returns whether a full inspection serves the work: any one from the combining days before it is due, or, done
     * under its own name for this season, one up to twice as early.
     */
    private boolean served(Inspected inspected, TaskOrigin origin, LocalDate due, DaySpan run) {
        LocalDate last = inspected.last();
        if (last == null) {
            return false;
        }
        if (!last.isBefore(due.minusDays(rules.combineDays()))) {
            return true;
        }
        LocalDate earliest = due.minusDays(2L * rules.combineDays());
        LocalDate from = origin == TaskOrigin.SEASON_CLOSING && earliest.isBefore(run.first()) ? run.first() : earliest;
        return inspected.done().stream()
                .anyMatch(work -> work.origin() == origin && !work.on().isBefore(from));
    }

    private static LocalDate firstOut(List<DaySpan> rentals, LocalDate from, LocalDate until) {
        LocalDate first = null;
        for (DaySpan rental : rentals) {
            LocalDate out = rental.first();
            boolean counts = !out.isBefore(from) && !out.isAfter(until);
            first = counts && (first == null || out.isBefore(first)) ? out : first;
        }
        return first;
    }

    /** Returns the last return if the season is nearly over and the unit is not booked again, else the closing day. */
    private LocalDate closingBase(List<DaySpan> rentals, DaySpan run, LocalDate today) {
        LocalDate closes = run.last();
        LocalDate earliest = IntervalWork.later(
                closes.minusDays(rules.closing().lastReturnDays()), run.first().plusDays(SHORTEST_OPEN_DAYS));
        LocalDate lastBack = null;
        for (DaySpan rental : rentals) {
            if (rental.first().isAfter(closes)) {
                continue;
            }
            boolean notBack = rental.last() == null || rental.last().isAfter(today);
            if (notBack || rental.first().isAfter(today)) {
                return closes;
            }
            lastBack = IntervalWork.later(lastBack, rental.last());
        }
        boolean outThisSeason = lastBack != null && !lastBack.isBefore(run.first());
        if (today.isBefore(earliest) || !outThisSeason || lastBack.isAfter(closes)) {
            return closes;
        }
        return IntervalWork.later(lastBack, earliest);
    }
}
