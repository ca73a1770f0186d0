package dev.lapwing.jobs.application;

import dev.lapwing.care.Signer;
import dev.lapwing.care.application.FinishingTasks;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.domain.sealant.Sealant;
import dev.lapwing.jobs.domain.sealant.SealantAnswer;
import dev.lapwing.jobs.domain.sheet.SheetEvent;
import dev.lapwing.jobs.domain.sheet.SheetEventKind;
import dev.lapwing.jobs.domain.verdict.Work;
import dev.lapwing.jobs.storage.RecordedEvent;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Puts sealant on roofs: only of the roof's own system, and only on a surface that holds it. */
@ApplicationScoped
public class UsingSealants {
    @Inject
    FinishingTasks tasks;

    @Inject
    DepotLists lists;

    @Inject
    SealantSituations situations;

    @Inject
    SheetLog log;

    @Inject
    Clock clock;

    /** Notes the sealant that is used. One that must not go on this roof, or not yet, is refused with the reason. */
    @Transactional
    public RecordedEvent use(UUID taskId, String name, Signer by) {
        CareTask task = tasks.underWay(taskId, by);
        Instant now = now();
        Sealant sealant = lists.sealant(task.depot.code, name)
                .orElseThrow(() -> Refused.invalid("sealant", "is not on the list of " + task.depot.name));
        SealantAnswer answer = situations.of(task.unit, now).mayUse(sealant);
        if (answer instanceof SealantAnswer.WrongSystem wrong) {
            throw Refused.invalid("sealant", "must not go on this roof: " + wrong.because());
        }
        if (!(answer instanceof SealantAnswer.Allowed)) {
            throw Refused.conflict("No sealant yet: " + answer.because());
        }
        var event = new SheetEvent(SheetEventKind.SEALANT, sealant.name(), answer.because(), now);
        return log.write(task, event, by, now);
    }

    /**
     * Notes that a chalking surface was treated and tried.
     *
     * @param held whether a test of sealant held on it
     * @param words how it was treated and tried
     */
    @Transactional
    public RecordedEvent treated(UUID taskId, Boolean held, String words, Signer by) {
        var errors = new FieldErrors();
        errors.present(held, "held");
        SheetWords.checkNeeded(errors, words, SheetWords.LONGEST, "words");
        errors.refuseIfAny();
        CareTask task = tasks.underWay(taskId, by);
        Instant now = now();
        var kind = held ? SheetEventKind.TREATED : SheetEventKind.TREATED_IN_VAIN;
        return log.write(task, new SheetEvent(kind, null, words.strip(), now), by, now);
    }

    /** Returns whether a task puts sealant on the roof, or treats its surface for it. */
    public boolean concern(CareTask task) {
        Work work = WorkOfTask.of(task);
        return work != null && (work.needsSealant() || work == Work.SURFACE_TREATMENT);
    }

    /** Returns what must come before any sealant goes on the roof of a task, in words. */
    public List<String> comesFirst(CareTask task) {
        return situations.of(task.unit, now()).comesFirst().stream()
                .map(SealantAnswer::because)
                .toList();
    }

    /** Returns the sealant that was noted last on the sheet of a task. */
    public Optional<String> used(CareTask task) {
        return SheetLog.sealantUsed(task.id);
    }

    /** Refuses the end of sealant work that names no sealant, or of a treatment that did not hold. */
    void requireDone(CareTask task) {
        Work work = WorkOfTask.of(task);
        List<SheetEvent> events = SheetLog.of(task.id);
        if (work != null && work.isSealantRun() && !has(events, SheetEventKind.SEALANT)) {
            throw Refused.conflict("Name the sealant that was used before you sign");
        }
        if (work == Work.SURFACE_TREATMENT && !has(events, SheetEventKind.TREATED)) {
            throw Refused.conflict("Note the treatment and a test that held before you sign");
        }
    }

    private static boolean has(List<SheetEvent> events, SheetEventKind kind) {
        return events.stream().anyMatch(event -> event.kind() == kind);
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
