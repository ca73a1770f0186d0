package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.util.List;

/**
 * The one place a unit has for scheduled work of a kind: sets the open tasks of that kind against the work wanted.
 *
 * <p>A task that no longer fits is called off and, where work is still wanted, a new one made; so every due date once
 * given stays on record. Two limits hold. What a person has touched stays, and a question is asked instead. What is
 * already due never moves to a later day: only an inspection done, a new roof or the end of service takes it away, or a
 * change of use, season or service that had come before the due day and was only seen late.
 */
final class Slot {
    private final Wanted wanted;
    private final Inspected inspected;
    private final int combineDays;
    private final LocalDate today;
    private final LocalDate basisSince;
    private final List<Change> changes;
    private OpenTask kept;
    private String keptWhy;

    /**
     * Prepares the place.
     *
     * @param basisSince day the present use, season and service began to count
     */
    Slot(
            Wanted wanted,
            Inspected inspected,
            int combineDays,
            LocalDate today,
            LocalDate basisSince,
            List<Change> changes) {
        this.wanted = wanted;
        this.inspected = inspected;
        this.combineDays = combineDays;
        this.today = today;
        this.basisSince = basisSince;
        this.changes = changes;
    }

    /**
     * Goes through the open tasks and returns the work that holds the place afterwards, or null.
     *
     * @param tasks open scheduled tasks of the kind, touched ones first, then those that fit
     */
    NextDue settle(List<OpenTask> tasks) {
        for (OpenTask task : tasks) {
            if (task.touched()) {
                leave(task);
            } else {
                weigh(task);
            }
        }
        if (kept != null) {
            return new NextDue(kept.kind(), kept.origin(), kept.window(), keptWhy);
        }
        if (wanted == null) {
            return null;
        }
        changes.add(new Change.Create(
                wanted.kind(), wanted.origin(), wanted.window(), null, null, wanted.why(), wanted.rule()));
        return new NextDue(wanted.kind(), wanted.origin(), wanted.window(), wanted.why());
    }

    private void leave(OpenTask task) {
        boolean fits = kept == null && wanted != null && wanted.isMetBy(task);
        if (fits) {
            changes.add(new Change.Keep(task.id(), wanted.why()));
        } else {
            changes.add(new Change.Ask(task.id(), question(task)));
        }
        keep(task, wanted == null ? "taken in hand by a person" : wanted.why());
    }

    private String question(OpenTask task) {
        String served = inspected.reasonServed(task, combineDays);
        if (served != null) {
            return "No longer needed: " + served + ".";
        }
        if (kept != null) {
            return "A second task of its kind is open.";
        }
        return wanted == null
                ? "No rule asks for it any more."
                : "The rules now say due " + Wording.day(wanted.due()) + ": " + wanted.why() + ".";
    }

    private void weigh(OpenTask task) {
        String served = inspected.reasonServed(task, combineDays);
        if (kept != null) {
            callOff(task, served != null ? served : "task " + kept.id() + " stands for the same work");
        } else if (wanted != null && wanted.isMetBy(task)) {
            keep(task, wanted.why());
            changes.add(new Change.Keep(task.id(), wanted.why()));
        } else if (served != null) {
            callOff(task, served);
        } else if (mayNotMoveLater(task)) {
            keep(task, "already due on " + Wording.day(task.window().due()) + ", not done yet");
            changes.add(new Change.Keep(task.id(), keptWhy));
        } else {
            callOff(task, wanted == null ? "no rule asks for it any more" : reasonMoved(task));
        }
    }

    private boolean mayNotMoveLater(OpenTask task) {
        LocalDate due = task.window().due();
        boolean changedBefore = basisSince.isAfter(task.plannedOn()) && !basisSince.isAfter(due);
        boolean later = wanted == null || wanted.due().isAfter(due);
        return !due.isAfter(today) && later && !changedBefore;
    }

    private String reasonMoved(OpenTask task) {
        String due = Wording.day(task.window().due());
        return task.window().due().equals(wanted.due())
                ? "replaced, same due day: " + wanted.why()
                : "moved from due " + due + " to " + Wording.day(wanted.due()) + ": " + wanted.why();
    }

    private void keep(OpenTask task, String why) {
        if (kept == null) {
            kept = task;
            keptWhy = why;
        }
    }

    private void callOff(OpenTask task, String reason) {
        changes.add(new Change.CallOff(task.id(), reason));
    }
}
