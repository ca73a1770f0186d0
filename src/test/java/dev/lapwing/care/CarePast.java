package dev.lapwing.care;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Unit;
import dev.lapwing.use.domain.UsePattern;
import dev.lapwing.use.storage.SetPattern;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/** Gives a unit a past: it has long been in service, and work was done on its roof. */
@ApplicationScoped
public class CarePast {
    private static final int LONG_IN_SERVICE = 800;

    @Inject
    Clock clock;

    @Transactional
    public void longInService(String number) {
        Unit unit = Unit.require(number);
        unit.inServiceFrom = unit.depot.dateAt(clock.instant()).minusDays(LONG_IN_SERVICE);
    }

    /** Notes that the roof was washed and inspected as routine work. */
    @Transactional
    public void inspected(String number, int daysAgo) {
        CareTask task = task(number, TaskKind.INSPECTION, TaskOrigin.INTERVAL, daysAgo);
        task.state = TaskState.DONE;
        task.doneOn = task.due;
        task.doneAt = task.dueAt;
        task.touched = true;
        task.persist();
    }

    /** Opens a touch-up that an inspection so long ago asked for. */
    @Transactional
    public UUID followUp(String number, int daysAgo, boolean touched) {
        CareTask task = task(number, TaskKind.TOUCH_UP, TaskOrigin.FOLLOW_UP, daysAgo);
        task.due = task.due.plusDays(daysAgo + 7);
        task.late = task.due;
        task.state = TaskState.PLANNED;
        task.touched = touched;
        task.persist();
        return task.id;
    }

    private CareTask task(String number, TaskKind kind, TaskOrigin origin, int daysAgo) {
        Unit unit = Unit.require(number);
        LocalDate day = unit.depot.dateAt(clock.instant()).minusDays(daysAgo);
        var task = new CareTask();
        task.id = UUID.randomUUID();
        task.unit = unit;
        task.depot = unit.depot;
        task.kind = kind;
        task.origin = origin;
        task.why = "put there by a test";
        task.opens = day;
        task.due = day;
        task.late = day;
        task.dueAt = day.atStartOfDay(unit.depot.zoneId()).toInstant();
        task.createdAt = clock.instant().minus(Duration.ofDays(daysAgo));
        task.createdBy = "test";
        return task;
    }

    /** Sets a pattern as if it had been set so long ago and had counted for so many days. */
    @Transactional
    public void patternSet(String number, UsePattern pattern, int daysAgo, int days) {
        Unit unit = Unit.require(number);
        Instant at = clock.instant().minus(Duration.ofDays(daysAgo));
        var set = new SetPattern();
        set.unitId = unit.id;
        set.pattern = pattern;
        set.reason = "put there by a test";
        set.setBy = "test";
        set.setAt = at;
        set.setUntil = unit.depot.dateAt(at).plusDays(days - 1L);
        set.persist();
    }

    @Transactional
    public Instant dueAt(String task) {
        return CareTask.require(UUID.fromString(task)).dueAt;
    }
}
