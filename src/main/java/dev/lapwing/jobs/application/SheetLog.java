package dev.lapwing.jobs.application;

import dev.lapwing.audit.AuditTrail;
import dev.lapwing.audit.Audited;
import dev.lapwing.care.Signer;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.domain.sheet.SheetEvent;
import dev.lapwing.jobs.domain.sheet.SheetEventKind;
import dev.lapwing.jobs.storage.RecordedEvent;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Writes down what is done on a sheet, on the sheet and in the audit. */
@ApplicationScoped
class SheetLog {
    private static final int MOST_OF_A_TASK = 500;

    @Inject
    AuditTrail audit;

    @Inject
    Ids ids;

    /** Adds an event to the sheet of a task that the caller keeps from others. */
    RecordedEvent write(CareTask task, SheetEvent event, Signer by, Instant at) {
        int position = (int) RecordedEvent.count("taskId", task.id);
        if (position >= MOST_OF_A_TASK) {
            throw Refused.conflict("A sheet takes at most " + MOST_OF_A_TASK + " entries");
        }
        var recorded = new RecordedEvent();
        recorded.id = ids.next();
        recorded.taskId = task.id;
        recorded.position = position;
        recorded.kind = event.kind();
        recorded.subject = event.subject();
        recorded.words = event.words();
        recorded.moment = event.moment();
        recorded.recordedAt = at;
        recorded.recordedBy = by.username();
        recorded.byLink = by.byLink();
        recorded.persist();
        String what = "sheet: " + event.kind().word();
        audit.write(Audited.added(task.unit.id, what, "jobs", recorded.id, event.inWords()), by.username(), at);
        return recorded;
    }

    /** Returns the sealant that was noted last on a sheet. */
    static Optional<String> sealantUsed(UUID taskId) {
        return of(taskId).stream()
                .filter(event -> event.kind() == SheetEventKind.SEALANT)
                .map(SheetEvent::subject)
                .reduce((earlier, later) -> later);
    }

    /** Returns the events of a sheet, oldest first. */
    static List<SheetEvent> of(UUID taskId) {
        return RecordedEvent.of(taskId).stream().map(RecordedEvent::event).toList();
    }
}
