package dev.lapwing.care.application;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.SweepRun;
import dev.lapwing.care.storage.SweepWriter;
import dev.lapwing.fleet.Depot;
import dev.lapwing.fleet.DepotSaved;
import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitSaved;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.quartz.SchedulerException;

/**
 * Keeps open work where its unit is. The dates of a task are local days and stay what they are; who has it stays too. A
 * task that moves with its unit says so in its steps.
 */
@ApplicationScoped
class FollowingMoves {
    private static final int BEFORE_THE_WORK_IS_PLANNED = 100;
    private static final int AFTER_THE_NIGHTLY_SWEEP_IS_SET = 3000;

    @Inject
    TaskLog log;

    @Inject
    SweepTimetable timetable;

    @Transactional(Transactional.TxType.MANDATORY)
    void unitSaved(@Observes @Priority(BEFORE_THE_WORK_IS_PLANNED) UnitSaved saved) {
        Unit unit = Unit.findById(saved.unitId());
        for (CareTask task : CareTask.openOf(List.of(unit.id))) {
            if (!task.depot.code.equals(unit.depot.code)) {
                move(task, unit.depot, saved.at(), saved.by());
            }
        }
    }

    private void move(CareTask task, Depot depot, Instant at, String by) {
        String words = "Moved with its unit from " + task.depot.name + " to " + depot.name
                + (task.assignee == null ? "" : "; " + task.assignee + " still has it");
        task.depot = depot;
        task.setDueAtOfDay();
        log.write(task, by, words, at);
    }

    /** Reckons the instants of dated work anew, since the days of the depot may begin at another, and plans anew. */
    @Transactional(Transactional.TxType.MANDATORY)
    void depotSaved(@Observes @Priority(AFTER_THE_NIGHTLY_SWEEP_IS_SET) DepotSaved saved) throws SchedulerException {
        if (!saved.datesChanged()) {
            return;
        }
        Depot depot = Depot.findById(saved.code());
        for (LocalDate due : CareTask.datedDueDaysAt(depot)) {
            CareTask.setDueAt(depot, due, due.atStartOfDay(depot.zoneId()).toInstant());
        }
        timetable.ask(saved.code(), SweepRun.Cause.DEPOT, SweepWriter.SWEEP);
    }
}
