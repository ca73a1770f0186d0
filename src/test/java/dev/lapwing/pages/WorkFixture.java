package dev.lapwing.pages;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Unit;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.UUID;

/** Puts work into the test database that nobody has yet. */
@ApplicationScoped
public class WorkFixture {
    @Inject
    Clock clock;

    /** Adds a touch-up of a unit that is due today. */
    @Transactional
    public void due(String unit) {
        var task = new CareTask();
        task.id = UUID.randomUUID();
        task.unit = Unit.require(unit);
        task.depot = task.unit.depot;
        LocalDate today = task.depot.dateAt(clock.instant());
        task.kind = TaskKind.TOUCH_UP;
        task.origin = TaskOrigin.BY_HAND;
        task.why = "asked for by the coordinator";
        task.opens = today;
        task.due = today;
        task.late = today.plusDays(7);
        task.dueAt = today.atStartOfDay(task.depot.zoneId()).toInstant();
        task.state = TaskState.PLANNED;
        task.touched = true;
        task.createdAt = clock.instant();
        task.createdBy = "coordinator";
        task.persist();
    }
}
