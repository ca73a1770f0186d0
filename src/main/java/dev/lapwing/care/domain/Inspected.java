package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What was last seen of a roof, as far as one kind of routine work is concerned: the work that serves it, oldest first,
 * none from before the roof was replaced.
 *
 * @param done that work
 * @param newRoofOn day the roof was replaced while the unit was known, null if it was not; it counts as looked at
 */
record Inspected(List<DoneWork> done, LocalDate newRoofOn) {
    static Inspected by(UnitFacts facts, TaskKind kind, LocalDate today) {
        LocalDate installed = facts.roof().installedOn();
        boolean replaced = installed != null && facts.service().mayHaveSeenNew(installed) && !installed.isAfter(today);
        LocalDate newRoof = replaced ? installed : null;
        var serving = new ArrayList<DoneWork>(facts.done().size());
        for (DoneWork work : facts.done()) {
            if (work.kind().serves(kind) && (newRoof == null || !work.on().isBefore(newRoof))) {
                serving.add(work);
            }
        }
        if (serving.size() > 1) {
            serving.sort(Comparator.comparing(DoneWork::on).thenComparing(DoneWork::origin));
        }
        return new Inspected(serving, newRoof);
    }

    /** Returns the last day the roof was looked at or put on, or null. */
    LocalDate last() {
        return done.isEmpty() ? newRoofOn : done.get(done.size() - 1).on();
    }

    /** Returns why an open task is no longer needed, or null when it still is. */
    String reasonServed(OpenTask task, int combineDays) {
        LocalDate earliest = task.window().due().minusDays(combineDays);
        if (newRoofOn != null && (newRoofOn.isAfter(task.plannedOn()) || !newRoofOn.isBefore(earliest))) {
            return "the roof was replaced on " + Wording.day(newRoofOn);
        }
        for (DoneWork work : done) {
            if (!work.on().isBefore(earliest)) {
                return "served by the " + work.kind().label() + " of " + Wording.day(work.on()) + " (due "
                        + Wording.day(task.window().due()) + ")";
            }
        }
        return null;
    }
}
