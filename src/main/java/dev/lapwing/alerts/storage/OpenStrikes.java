package dev.lapwing.alerts.storage;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import io.quarkus.hibernate.orm.panache.Panache;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** The strike inspections on which nobody is at work yet. */
public final class OpenStrikes {
    private OpenStrikes() {}

    /** Returns their tasks by the code of the depot, the oldest first. */
    public static Map<String, List<UUID>> waitingByDepot() {
        return Panache.getEntityManager()
                .createQuery(
                        "select t.depot.code, t.id from CareTask t where t.kind = :kind and t.state in :states"
                                + " order by t.depot.code, t.createdAt, t.id",
                        Object[].class)
                .setParameter("kind", TaskKind.STRIKE_INSPECTION)
                .setParameter("states", EnumSet.range(TaskState.PLANNED, TaskState.ACCEPTED))
                .getResultStream()
                .collect(Collectors.groupingBy(
                        row -> (String) row[0],
                        LinkedHashMap::new,
                        Collectors.mapping(row -> (UUID) row[1], Collectors.toList())));
    }

    /** Returns tasks with their units and depots, the oldest first. */
    public static List<CareTask> tasks(Collection<UUID> ids) {
        return CareTask.list(
                "from CareTask t join fetch t.unit join fetch t.depot where t.id in ?1 order by t.createdAt, t.id",
                ids);
    }
}
