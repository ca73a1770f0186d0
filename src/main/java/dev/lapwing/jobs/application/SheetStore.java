package dev.lapwing.jobs.application;

import dev.lapwing.audit.AuditTrail;
import dev.lapwing.audit.Audited;
import dev.lapwing.care.Signer;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.domain.sheet.SignOffEntry;
import dev.lapwing.jobs.domain.verdict.Outcome;
import dev.lapwing.jobs.domain.verdict.Reason;
import dev.lapwing.jobs.domain.verdict.Verdict;
import dev.lapwing.jobs.storage.SignedSheet;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;

/** Keeps signed sheets. */
@ApplicationScoped
class SheetStore {
    @Inject
    AuditTrail audit;

    /**
     * Stores a sheet that was checked and judged.
     *
     * @param covered the other strike inspections that it does
     */
    SignedSheet store(
            CareTask task, List<CareTask> covered, SignOffEntry entry, Signer signer, Outcome outcome, Instant at) {
        SignedSheet sheet = blank(task, entry.by().strip(), entry.statement().strip(), signer, at);
        sheet.cautionsRead = Boolean.TRUE.equals(entry.cautionsRead());
        sheet.dryAtInspection = Boolean.TRUE.equals(entry.dryAtInspection());
        sheet.verdict = outcome.verdict();
        addStrike(sheet, task);
        covered.forEach(other -> addStrike(sheet, other));
        outcome.reasons().stream().map(Reason::inWords).forEach(sheet.reasons::add);
        return keep(sheet);
    }

    /** Stores the sheet of work for which nobody goes up. */
    SignedSheet storeDeskWork(CareTask task, String name, String statement, Signer signer, Instant at) {
        SignedSheet sheet = blank(task, name, statement, signer, at);
        sheet.verdict = Verdict.FIT;
        return keep(sheet);
    }

    private static SignedSheet blank(CareTask task, String name, String statement, Signer signer, Instant at) {
        var sheet = new SignedSheet();
        sheet.taskId = task.id;
        sheet.unitId = task.unit.id;
        sheet.work = WorkOfTask.of(task);
        sheet.statement = statement;
        sheet.signedName = name;
        sheet.signedBy = signer.username();
        sheet.byLink = signer.byLink();
        sheet.signedAt = at;
        sheet.causes.add(task.id);
        return sheet;
    }

    private SignedSheet keep(SignedSheet sheet) {
        sheet.persist();
        String became = "verdict " + sheet.verdict.word() + ", signed " + sheet.signedName + ": " + sheet.statement
                + sheet.reasons.stream().map(reason -> "; " + reason).collect(Collectors.joining());
        audit.write(Audited.added(sheet.unitId, "sheet", "jobs", sheet.taskId, became), sheet.signedBy, sheet.signedAt);
        return sheet;
    }

    private static void addStrike(SignedSheet sheet, CareTask inspection) {
        if (inspection.strikeId != null) {
            sheet.causes.add(inspection.strikeId);
        }
    }
}
