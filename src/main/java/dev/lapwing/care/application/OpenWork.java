package dev.lapwing.care.application;

import dev.lapwing.care.Tech;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Counts the work that techs have in hand. */
final class OpenWork {
    private OpenWork() {}

    /** Returns how many open tasks each tech has; a tech with none is left out. */
    static Map<String, Long> countByTech(List<Tech> techs) {
        if (techs.isEmpty()) {
            return Map.of();
        }
        List<Object[]> counts = CareTask.getEntityManager()
                .createQuery(
                        "select t.assignee, count(t) from CareTask t where t.assignee in :techs and t.state in :open"
                                + " group by t.assignee",
                        Object[].class)
                .setParameter("techs", techs.stream().map(Tech::username).toList())
                .setParameter("open", TaskState.OPEN)
                .getResultList();
        return counts.stream().collect(Collectors.toMap(row -> (String) row[0], row -> (Long) row[1]));
    }
}
