package dev.lapwing.jobs.application;

import dev.lapwing.audit.AuditTrail;
import dev.lapwing.audit.Audited;
import dev.lapwing.care.Signer;
import dev.lapwing.care.application.FinishingTasks;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.domain.Words;
import dev.lapwing.jobs.domain.verdict.Choice;
import dev.lapwing.jobs.domain.verdict.Work;
import dev.lapwing.jobs.storage.Decision;
import dev.lapwing.jobs.storage.OpenChoice;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.UUID;
import java.util.stream.Collectors;

/** Lets the coordinator choose between rework over the old sealant and full replacement. */
@ApplicationScoped
public class DecidingRework {
    @Inject
    FinishingTasks tasks;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    /**
     * Chooses one of the options of a task; the task becomes that work.
     *
     * @param choice word of the work, such as {@code rework}
     * @param reason why, in the coordinator's words
     */
    @Transactional
    public Decision decide(UUID taskId, String choice, String reason, Signer by) {
        var errors = new FieldErrors();
        errors.present(choice, "choice");
        SheetWords.checkNeeded(errors, reason, SheetWords.LONGEST, "reason");
        errors.refuseIfAny();
        CareTask task = tasks.open(taskId, by);
        OpenChoice open = OpenChoice.findById(taskId);
        if (open == null) {
            throw Refused.conflict("There is nothing to decide on this task");
        }
        if (Decision.findById(taskId) != null) {
            throw Refused.conflict("This was decided already");
        }
        Work chosen = Words.read(Work.class, choice)
                .filter(work -> open.options().stream().anyMatch(option -> option.work() == work))
                .orElseThrow(() -> Refused.invalid("choice", "must be one of " + words(open)));
        return store(task, chosen, reason.strip(), by);
    }

    private Decision store(CareTask task, Work chosen, String reason, Signer by) {
        Instant now = clock.instant();
        var decision = new Decision();
        decision.taskId = task.id;
        decision.chosen = chosen;
        decision.reason = reason;
        decision.decidedAt = now;
        decision.decidedBy = by.username();
        decision.persist();
        String words = chosen.word().replace('-', ' ') + ", because: " + reason;
        audit.write(Audited.of(task.unit.id, "decision", "jobs", task.id, "undecided", words), by.username(), now);
        tasks.turnInto(task, WorkOfTask.kindFor(chosen), by.username(), "Decided: " + words, now);
        return decision;
    }

    private static String words(OpenChoice open) {
        return open.options().stream().map(Choice.Option::work).map(Work::word).collect(Collectors.joining(", "));
    }
}
