package dev.lapwing.jobs.application;

import dev.lapwing.care.Signer;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.domain.sheet.SignOffEntry;
import dev.lapwing.jobs.domain.verdict.Outcome;
import dev.lapwing.jobs.domain.verdict.Reason;
import dev.lapwing.jobs.domain.verdict.Work;
import dev.lapwing.jobs.storage.PlannedFollowUp;
import dev.lapwing.jobs.storage.SignedSheet;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;

/** Keeps signed sheets. */
@ApplicationScoped
class SheetStore {
    /**
     * Stores a sheet that was checked and judged.
     *
     * @param covered the other strike inspections that it does
     */
    SignedSheet store(
            CareTask task, List<CareTask> covered, SignOffEntry entry, Signer signer, Outcome outcome, Instant at) {
        var sheet = new SignedSheet();
        sheet.taskId = task.id;
        sheet.unitId = task.unit.id;
        sheet.work = workOf(task);
        sheet.cautionsRead = entry.cautionsRead();
        sheet.dryAtInspection = entry.dryAtInspection();
        sheet.statement = entry.statement().strip();
        sheet.signedName = entry.by().strip();
        sheet.signedBy = signer.username();
        sheet.byLink = signer.byLink();
        sheet.signedAt = at;
        sheet.verdict = outcome.verdict();
        sheet.causes.add(task.id);
        addStrike(sheet, task);
        covered.forEach(other -> addStrike(sheet, other));
        outcome.reasons().stream().map(Reason::inWords).forEach(sheet.reasons::add);
        sheet.persist();
        return sheet;
    }

    private static void addStrike(SignedSheet sheet, CareTask inspection) {
        if (inspection.strikeId != null) {
            sheet.causes.add(inspection.strikeId);
        }
    }

    /** Returns what a follow-up was planned as; work added by a person goes by its kind. */
    private static Work workOf(CareTask task) {
        PlannedFollowUp planned = PlannedFollowUp.findById(task.id);
        return planned == null ? workOf(task.kind) : planned.work;
    }

    private static Work workOf(TaskKind kind) {
        return switch (kind) {
            case WASH, INSPECTION, STRIKE_INSPECTION -> null;
            case TOUCH_UP -> Work.TOUCH_UP;
            case REWORK -> Work.REWORK;
            case SEALANT_REPLACEMENT -> Work.SEALANT_REPLACEMENT;
            case MEMBRANE_REPAIR -> Work.MEMBRANE_REPAIR;
        };
    }
}
