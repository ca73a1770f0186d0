package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Sweeps a unit once and says in one error what does not hold before, during or after it. */
final class Invariants {
    private final CareFixture unit;
    private final DueEngine engine;

    Invariants(CareFixture unit, DueEngine engine) {
        this.unit = unit;
        this.engine = engine;
    }

    void sweep(LocalDate today) {
        List<OpenTask> before = new ArrayList<>(unit.open);
        Plan plan = unit.sweep(engine, today);

        for (OpenTask task : before) {
            if (!unit.open.contains(task)) {
                mayBeCalledOff(task, plan, today);
            }
        }
        require(!plan.withoutSchedule(), () -> "a unit in service has a next date", today);
        onePlace(plan, today);
        everyEventIsAnswered(today);
        require(!engine.plan(unit.facts(), today).changesAnything(), () -> "a second sweep changes nothing", today);
    }

    private void mayBeCalledOff(OpenTask task, Plan plan, LocalDate today) {
        require(!task.touched(), () -> "touched work stays: " + task, today);
        require(!task.origin().event(), () -> "event work stays: " + task, today);
        boolean wasDue = !task.window().due().isAfter(today);
        if (!wasDue || !plan.inService() || task.origin() == TaskOrigin.FOLLOW_UP) {
            return;
        }
        boolean movedEarlier = !plan.next().window().due().isAfter(task.window().due());
        boolean inspected = unit.done.stream()
                .anyMatch(work -> !work.on().isBefore(task.window().due().minusDays(30)));
        boolean newRoof = unit.roof.installedOn().isAfter(task.plannedOn());
        boolean changedBefore = changed(unit.use.since(), task)
                || changed(unit.seasonSince, task)
                || changed(unit.service.from(), task);
        require(
                movedEarlier || inspected || newRoof || changedBefore,
                () -> "work already due is not put off: " + task + " by " + plan,
                today);
    }

    private static boolean changed(LocalDate since, OpenTask task) {
        return since != null
                && since.isAfter(task.plannedOn())
                && !since.isAfter(task.window().due());
    }

    private void onePlace(Plan plan, LocalDate today) {
        int touched = 0;
        int untouched = 0;
        for (OpenTask task : unit.open) {
            if (task.origin().scheduled()) {
                touched += task.touched() ? 1 : 0;
                untouched += task.touched() ? 0 : 1;
            }
        }
        boolean right = plan.inService()
                ? (touched >= 1 && untouched == 0) || (touched == 0 && untouched == 1)
                : untouched == 0;
        require(right, () -> "one scheduled inspection is open, or only those taken in hand: " + unit.open, today);
    }

    private void everyEventIsAnswered(LocalDate today) {
        for (CareEvent event : unit.events) {
            boolean gone = unit.service.sold() && unit.service.endedBy(event.day());
            boolean open = unit.open.stream().anyMatch(task -> event.id().equals(task.event()));
            boolean later = unit.done.stream()
                    .anyMatch(work -> work.kind().fullInspection() && work.on().isAfter(event.day()));
            require(gone || open || later, () -> "an event has its inspection: " + event, today);
        }
    }

    private void require(boolean holds, Supplier<String> invariant, LocalDate today) {
        if (!holds) {
            throw new AssertionError(invariant.get() + "; unit " + unit.facts() + " on " + today);
        }
    }
}
