package dev.lapwing.care.web;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.UnitFacet;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/** Adds to a unit the open work that is due next. */
@ApplicationScoped
class NextDueFacet implements UnitFacet {
    record NextDueAnswer(UUID task, TaskKind kind, LocalDate opens, String due, LocalDate late, String why) {}

    @Override
    public String name() {
        return "nextDue";
    }

    @Override
    public Map<UUID, Object> valuesOf(Collection<UUID> unitIds) {
        Map<UUID, Object> values = new HashMap<>();
        for (CareTask task : CareTask.openOf(unitIds)) {
            values.putIfAbsent(
                    task.unit.id,
                    new NextDueAnswer(task.id, task.kind, task.opens, DueItem.due(task), task.late, task.why));
        }
        return values;
    }
}
