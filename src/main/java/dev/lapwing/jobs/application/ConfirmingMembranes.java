package dev.lapwing.jobs.application;

import dev.lapwing.audit.AuditTrail;
import dev.lapwing.audit.Audited;
import dev.lapwing.care.Signer;
import dev.lapwing.care.application.FinishingTasks;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Roof;
import dev.lapwing.jobs.storage.MembraneWord;
import dev.lapwing.jobs.storage.SignedSheet;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.PersonNames;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.UUID;

/** Finds out which membrane system a roof has, so that sealant work can begin. */
@ApplicationScoped
public class ConfirmingMembranes {
    private static final int LONGEST_NAME = 100;
    private static final int MOST_YEARS_AGO = 50;

    @Inject
    FinishingTasks tasks;

    @Inject
    SheetStore sheets;

    @Inject
    EndingHolds ending;

    @Inject
    PersonNames names;

    @Inject
    AuditTrail audit;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /**
     * Enters what the dealer or maker confirmed, on the task that asks for it, and ends the task. The roof's facts then
     * say so.
     *
     * @param confirmedOn the day, or null for today
     */
    @Transactional
    public CareTask confirm(UUID taskId, String system, String confirmedBy, LocalDate confirmedOn, Signer by) {
        refuseWrong(system, confirmedBy, "confirmedBy");
        CareTask task = asked(taskId, by);
        Instant now = now();
        LocalDate today = task.depot.dateAt(now);
        LocalDate day = confirmedOn == null ? today : confirmedOn;
        if (day.isAfter(today) || day.isBefore(today.minusYears(MOST_YEARS_AGO))) {
            throw Refused.invalid("confirmedOn", "must lie within the last " + MOST_YEARS_AGO + " years");
        }
        MembraneWord word = store(task, false, system, confirmedBy, day, by, now);
        String was = inWords(task.unit.roof);
        task.unit.roof.membraneSystem = word.system;
        task.unit.roof.confirmedBy = word.source;
        task.unit.roof.confirmedOn = day;
        String became = inWords(task.unit.roof);
        audit.write(
                Audited.of(task.unit.id, "roof: membrane system", "fleet", task.unit.id, was, became),
                by.username(),
                now);
        end(task, "Membrane system " + word.system + " confirmed by " + word.source, by, now);
        return task;
    }

    /** Lets the coordinator vouch for the system instead, with where that comes from; the roof stays unconfirmed. */
    @Transactional
    public CareTask overrule(UUID taskId, String system, String source, Signer by) {
        refuseWrong(system, source, "source");
        if (!by.coordinator()) {
            throw Refused.forbidden("Only a coordinator overrules the guard");
        }
        CareTask task = asked(taskId, by);
        Instant now = now();
        MembraneWord word = store(task, true, system, source, task.depot.dateAt(now), by, now);
        String words = "Overruled: " + word.system + ", on the word of " + names.of(by.username()) + "; source: "
                + word.source;
        audit.write(Audited.added(task.unit.id, "sealant guard overruled", "jobs", word.id, words), by.username(), now);
        end(task, words, by, now);
        return task;
    }

    private CareTask asked(UUID taskId, Signer by) {
        CareTask task = tasks.open(taskId, by);
        if (task.kind != TaskKind.CONFIRM_MEMBRANE) {
            throw Refused.conflict("This task does not ask for the membrane system");
        }
        return task;
    }

    private MembraneWord store(
            CareTask task, boolean overruled, String system, String source, LocalDate day, Signer by, Instant now) {
        var word = new MembraneWord();
        word.id = ids.next();
        word.unitId = task.unit.id;
        word.taskId = task.id;
        word.overruled = overruled;
        word.system = system.strip();
        word.source = source.strip();
        word.givenOn = day;
        word.recordedAt = now;
        word.recordedBy = by.username();
        word.persist();
        return word;
    }

    private void end(CareTask task, String statement, Signer by, Instant now) {
        SignedSheet sheet = sheets.storeDeskWork(task, names.of(by.username()), statement, by, now);
        tasks.finish(task, by.username(), statement, now);
        ending.after(sheet, by);
    }

    private static void refuseWrong(String system, String source, String field) {
        var errors = new FieldErrors();
        SheetWords.checkNeeded(errors, system, LONGEST_NAME, "system");
        SheetWords.checkNeeded(errors, source, LONGEST_NAME, field);
        errors.refuseIfAny();
    }

    private static String inWords(Roof roof) {
        return (roof.membraneSystem == null ? "not recorded" : roof.membraneSystem)
                + (roof.confirmedBy == null
                        ? ", not confirmed"
                        : ", confirmed by " + roof.confirmedBy
                                + (roof.confirmedOn == null ? "" : " on " + roof.confirmedOn));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
