package dev.lapwing.jobs.web;

import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.ReadingCautions;
import dev.lapwing.jobs.domain.Words;
import dev.lapwing.jobs.storage.PlannedFollowUp;
import dev.lapwing.jobs.storage.RecordedFinding;
import dev.lapwing.jobs.storage.SheetEntries;
import dev.lapwing.jobs.storage.SignedSheet;
import dev.lapwing.jobs.storage.WithdrawnFinding;
import dev.lapwing.web.Dates;
import dev.lapwing.web.PersonNames;
import dev.lapwing.web.Shell;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;

/** Says how far a sheet is, for the person who looks at it. */
@ApplicationScoped
class SheetStates {
    @Inject
    ReadingCautions cautions;

    @Inject
    PersonNames names;

    @Inject
    Clock clock;

    SheetState of(CareTask task, Shell shell) {
        boolean mayFill = task.state.open() && has(task, shell);
        return new SheetState(
                clock.millis(),
                SheetEntries.of(task.id),
                mayFill,
                cautions.readBy(task, shell.username()),
                task.state == TaskState.UNDER_WAY,
                mayFill ? null : closedBecause(task),
                RecordedFinding.of(task.id).stream()
                        .map(found -> line(found, task.depot.zoneId(), shell))
                        .toList(),
                WithdrawnFinding.of(task.id).stream()
                        .map(gone -> takenBack(gone, task.depot.zoneId(), shell))
                        .toList(),
                signed(task));
    }

    private static boolean has(CareTask task, Shell shell) {
        return shell.coordinator()
                || shell.tech() && (task.assignee == null || shell.username().equals(task.assignee));
    }

    private String closedBecause(CareTask task) {
        return task.state.open()
                ? "Only " + (task.assignee == null ? "a tech" : names.of(task.assignee))
                        + " or the coordinator fills in this sheet."
                : "The task is " + task.state.word() + ".";
    }

    private SheetState.FindingLine line(RecordedFinding found, ZoneId zone, Shell shell) {
        return new SheetState.FindingLine(
                found.id,
                found.finding().inWords(),
                Dates.time(found.recordedAt, zone),
                who(found.recordedBy, found.byLink),
                found.recordedBy.equals(shell.username()),
                found.zone,
                found.kind.word(),
                found.depth == null ? null : Words.of(found.depth),
                found.extent == null ? null : Words.of(found.extent),
                found.lengthCm,
                found.note,
                found.x,
                found.y);
    }

    private SheetState.TakenBack takenBack(WithdrawnFinding gone, ZoneId zone, Shell shell) {
        RecordedFinding found = RecordedFinding.findById(gone.findingId);
        String words = found.finding().inWords() + ": noted by " + who(found.recordedBy, found.byLink)
                + ", taken back by " + who(gone.withdrawnBy, gone.byLink) + ", "
                + Dates.time(gone.withdrawnAt, zone);
        return new SheetState.TakenBack(words, gone.withdrawnBy.equals(shell.username()));
    }

    private String who(String username, boolean byLink) {
        return names.of(username) + (byLink ? " (by link)" : "");
    }

    private SheetState.Signed signed(CareTask task) {
        SignedSheet sheet = SignedSheet.findById(task.id);
        if (sheet == null) {
            return null;
        }
        Instant at = sheet.signedAt;
        return new SheetState.Signed(
                sheet.signedName + (sheet.byLink ? " (by link)" : ""),
                Dates.time(at, task.depot.zoneId()),
                sheet.statement,
                sheet.verdict.word().replace('-', ' '),
                List.copyOf(sheet.reasons),
                PlannedFollowUp.ofSheet(task.id).stream()
                        .map(work -> new SheetState.Work(
                                work.taskId, work.work.word().replace('-', ' ')))
                        .toList());
    }
}
