package dev.lapwing.jobs.application;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.domain.verdict.Work;
import dev.lapwing.jobs.storage.PlannedFollowUp;

/** Knows which work is done in a task. */
final class WorkOfTask {
    private WorkOfTask() {}

    /** Returns the work, or null when the roof is only washed or looked at. */
    static Work of(CareTask task) {
        return of(task, PlannedFollowUp.findById(task.id));
    }

    /**
     * Returns what a follow-up was planned as. Work added by a person, for which null is planned, goes by its kind; so
     * does rework, for which the coordinator may have decided to replace.
     */
    static Work of(CareTask task, PlannedFollowUp planned) {
        return planned == null || planned.work == Work.REWORK ? byKind(task.kind) : planned.work;
    }

    private static Work byKind(TaskKind kind) {
        return switch (kind) {
            case WASH, INSPECTION, STRIKE_INSPECTION -> null;
            case TOUCH_UP -> Work.TOUCH_UP;
            case REWORK -> Work.REWORK;
            case SEALANT_REPLACEMENT -> Work.SEALANT_REPLACEMENT;
            case MEMBRANE_REPAIR -> Work.MEMBRANE_REPAIR;
            case CONFIRM_MEMBRANE -> Work.CONFIRM_MEMBRANE;
        };
    }

    /** Returns the kind of task in which a work is done; work without a kind of its own goes by its words. */
    static TaskKind kindFor(Work work) {
        return switch (work) {
            case TOUCH_UP, SURFACE_TREATMENT, ATTACHMENT_REPAIR -> TaskKind.TOUCH_UP;
            case REWORK -> TaskKind.REWORK;
            case SEALANT_REPLACEMENT -> TaskKind.SEALANT_REPLACEMENT;
            case MEMBRANE_REPAIR, WORKSHOP_REFERRAL -> TaskKind.MEMBRANE_REPAIR;
            case CONFIRM_MEMBRANE -> TaskKind.CONFIRM_MEMBRANE;
        };
    }
}
