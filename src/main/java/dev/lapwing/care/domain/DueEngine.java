package dev.lapwing.care.domain;

import dev.lapwing.use.domain.UsePattern;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Says which work a unit needs, when and why: a function of the facts, the rules and the day, and of nothing else.
 * Asking twice, late or in another order gives the same answer; once its changes are made, it asks for none.
 * Instances hold no state beyond the rules and may be shared between threads.
 */
public final class DueEngine {
    private final CareRules rules;
    private final IntakeWork intake;
    private final IntervalWork intervals;
    private final SeasonWork seasons;
    private final EventWork events;
    private final boolean washes;

    public DueEngine(CareRules rules) {
        this.rules = rules;
        this.intake = new IntakeWork(rules);
        this.intervals = new IntervalWork(rules);
        this.seasons = new SeasonWork(rules);
        this.events = new EventWork(rules);
        this.washes = rules.intervals().stream().anyMatch(rule -> rule.kind() == TaskKind.WASH);
    }

    /**
     * Returns what is to change in the unit's work.
     *
     * @param today the local day at the unit's depot
     */
    public Plan plan(UnitFacts facts, LocalDate today) {
        var changes = new ArrayList<Change>(2);
        boolean inService = facts.service().covers(today);
        NextDue next = null;
        if (inService) {
            next = schedule(facts, today, changes);
        } else {
            Leaving.plan(facts, today, changes);
        }
        if (!facts.service().goneBy(today)) {
            dropWorkOnOldRoof(facts, today, changes);
        }
        events.plan(facts, changes);
        changes.sort(Comparator.comparing(change -> change instanceof Change.Create));
        return new Plan(facts.unit(), inService, changes, next);
    }

    private NextDue schedule(UnitFacts facts, LocalDate today, List<Change> changes) {
        LocalDate floor = IntervalWork.later(facts.service().from(), facts.use().since());
        LocalDate basisSince = seasonal(facts) ? IntervalWork.later(floor, facts.seasonSince()) : floor;
        UsePattern caredForAs = seasonal(facts) ? UsePattern.SEASONAL : UsePattern.FULL_TIME;
        Wanted inspection = intake.next(facts);
        if (inspection == null) {
            inspection = seasonal(facts)
                    ? seasons.next(facts, basisSince, today)
                    : intervals.next(facts, TaskKind.INSPECTION, caredForAs, floor, today);
        }
        NextDue next = settle(facts, TaskKind.INSPECTION, inspection, today, basisSince, changes);
        Wanted wash = washes ? intervals.next(facts, TaskKind.WASH, caredForAs, floor, today) : null;
        return earlier(next, settle(facts, TaskKind.WASH, wash, today, basisSince, changes));
    }

    private static boolean seasonal(UnitFacts facts) {
        return facts.use().pattern() == UsePattern.SEASONAL && facts.season() != null;
    }

    private NextDue settle(
            UnitFacts facts,
            TaskKind kind,
            Wanted wanted,
            LocalDate today,
            LocalDate basisSince,
            List<Change> changes) {
        List<OpenTask> tasks = scheduled(facts, kind, wanted);
        if (wanted == null && tasks.isEmpty()) {
            return null;
        }
        var inspected = tasks.isEmpty() ? null : Inspected.by(facts, kind, today);
        return new Slot(wanted, inspected, rules.combineDays(), today, basisSince, changes).settle(tasks);
    }

    private static List<OpenTask> scheduled(UnitFacts facts, TaskKind kind, Wanted wanted) {
        var tasks = new ArrayList<OpenTask>(1);
        for (OpenTask task : facts.open()) {
            if (task.kind() == kind && task.origin().scheduled()) {
                tasks.add(task);
            }
        }
        if (tasks.size() > 1) {
            tasks.sort(Comparator.comparing((OpenTask task) -> !task.touched())
                    .thenComparing(task -> wanted == null || !wanted.isMetBy(task))
                    .thenComparing(OpenTask::id));
        }
        return tasks;
    }

    /** Calls off follow-up work planned on a roof that has since been replaced. */
    private static void dropWorkOnOldRoof(UnitFacts facts, LocalDate today, List<Change> changes) {
        LocalDate newRoof = Inspected.by(facts, TaskKind.INSPECTION, today).newRoofOn();
        if (newRoof == null) {
            return;
        }
        String reason = "the roof was replaced on " + Wording.day(newRoof);
        for (OpenTask task : facts.open()) {
            if (task.origin() == TaskOrigin.FOLLOW_UP && task.plannedOn().isBefore(newRoof)) {
                changes.add(
                        task.touched()
                                ? new Change.Ask(task.id(), "Still needed? " + reason + ".")
                                : new Change.CallOff(task.id(), reason));
            }
        }
    }

    private static NextDue earlier(NextDue one, NextDue other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return other.window().due().isBefore(one.window().due()) ? other : one;
    }
}
