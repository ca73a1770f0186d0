package dev.lapwing.care.domain;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/**
 * Makes the inspection an event asks for, if nobody has. Event work is never called off by the engine: it ends when it is
 * done or when a person says so.
 */
final class EventWork {
    private final CareRules rules;

    EventWork(CareRules rules) {
        this.rules = rules;
    }

    void plan(UnitFacts facts, List<Change> changes) {
        if (facts.events().isEmpty()) {
            return;
        }
        facts.events().stream()
                .sorted(Comparator.comparing(CareEvent::at).thenComparing(CareEvent::id))
                .filter(event -> !facts.service().goneBy(event.day()) && !answered(facts, event))
                .forEach(event -> create(facts, event, changes));
    }

    private void create(UnitFacts facts, CareEvent event, List<Change> changes) {
        for (CareRule.Event rule : rules.events()) {
            if (rule.event() == event.origin() && rule.when().mayHoldFor(facts.roof())) {
                Instant dueAt = event.at().plus(rule.within());
                LocalDate due = dueAt.atZone(facts.zone()).toLocalDate();
                LocalDate opens = due.isBefore(event.day()) ? due : event.day();
                String why = rule.kind().label() + ": " + event.origin().word() + " reported on "
                        + Wording.day(event.day()) + ", rule " + rule.ref();
                var window = new DueWindow(opens, due, due);
                changes.add(new Change.Create(rule.kind(), event.origin(), window, dueAt, event.id(), why, rule.ref()));
                return;
            }
        }
    }

    /**
     * Returns whether a task stands or stood for the event. An inspection of a later day answers it too; one of the same
     * day may have come before. After a strike only a strike inspection will do.
     */
    private static boolean answered(UnitFacts facts, CareEvent event) {
        boolean open = facts.open().stream().anyMatch(task -> event.id().equals(task.event()));
        return open || facts.done().stream().anyMatch(work -> answers(work, event));
    }

    private static boolean answers(DoneWork work, CareEvent event) {
        boolean looks = event.origin() == TaskOrigin.STRIKE
                ? work.kind() == TaskKind.STRIKE_INSPECTION
                : work.kind().fullInspection();
        return event.id().equals(work.event()) || (looks && work.on().isAfter(event.day()));
    }
}
