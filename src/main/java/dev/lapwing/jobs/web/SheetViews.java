package dev.lapwing.jobs.web;

import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Roof;
import dev.lapwing.jobs.application.SheetReference;
import dev.lapwing.jobs.domain.ladder.LadderSetup;
import dev.lapwing.jobs.domain.measure.Length;
import dev.lapwing.jobs.domain.sheet.Footing;
import dev.lapwing.jobs.domain.sheet.Text;
import dev.lapwing.jobs.storage.PlannedFollowUp;
import dev.lapwing.jobs.storage.RecordedFinding;
import dev.lapwing.jobs.storage.SignedSheet;
import dev.lapwing.web.Dates;
import dev.lapwing.web.PersonNames;
import dev.lapwing.web.Shell;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.ZoneId;
import java.util.List;

/** Gathers what the page of a sheet shows, in the order of the work. */
@ApplicationScoped
class SheetViews {
    @Inject
    SheetReference reference;

    @Inject
    PersonNames names;

    SheetView of(CareTask task, Shell shell) {
        Roof roof = task.unit.roof;
        String closed = closedBecause(task, shell);
        return new SheetView(
                task.id,
                task.unit.number,
                task.kind.label(),
                task.state.word(),
                closed == null,
                closed,
                cautions(task),
                LadderSetup.forLanding(new Length(task.unit.heightMetres)).lines(),
                reference.washSteps().steps(),
                membrane(roof),
                findings(task),
                signed(task));
    }

    /** Returns the cautions that must be read before work on the roof of a task. */
    List<Text> cautions(CareTask task) {
        return reference.cautions().before(Footing.of(task.unit.roof.footing.word()));
    }

    private String closedBecause(CareTask task, Shell shell) {
        if (task.state != TaskState.UNDER_WAY) {
            return task.state.open()
                    ? "Start the task before you fill in its sheet."
                    : "The task is " + task.state.word() + ".";
        }
        boolean own = shell.coordinator() || shell.tech() && shell.username().equals(task.assignee);
        return own ? null : "Only " + names.of(task.assignee) + " or the coordinator fills in this sheet.";
    }

    private static String membrane(Roof roof) {
        return roof.membraneSystem == null || roof.confirmedBy == null
                ? "Membrane system not confirmed: no sealant before the dealer or maker has confirmed it."
                : "Only sealant of the roof's own system, " + roof.membraneSystem + ".";
    }

    private List<SheetView.FindingLine> findings(CareTask task) {
        ZoneId zone = task.depot.zoneId();
        return RecordedFinding.of(task.id).stream()
                .map(found -> new SheetView.FindingLine(
                        found.finding().inWords(),
                        found.note,
                        Dates.time(found.recordedAt, zone),
                        names.of(found.recordedBy)))
                .toList();
    }

    private static SheetView.Signed signed(CareTask task) {
        SignedSheet sheet = SignedSheet.findById(task.id);
        if (sheet == null) {
            return null;
        }
        return new SheetView.Signed(
                sheet.signedName,
                Dates.time(sheet.signedAt, task.depot.zoneId()),
                sheet.statement,
                sheet.verdict.word().replace('-', ' '),
                List.copyOf(sheet.reasons),
                PlannedFollowUp.ofSheet(task.id).stream()
                        .map(work ->
                                new SheetView.Work(work.taskId, work.work.word().replace('-', ' ')))
                        .toList());
    }
}
