package dev.lapwing.care.web;

import dev.lapwing.care.RainOutlook;
import dev.lapwing.care.Tech;
import dev.lapwing.care.TechRoster;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** Puts tasks into words together with their units' holds and the techs who could do them. */
@ApplicationScoped
class DueRows {
    @Inject
    TechRoster roster;

    @Inject
    RainOutlook rain;

    List<DueRow> of(List<CareTask> tasks, Instant now) {
        List<UUID> unitIds = tasks.stream().map(task -> task.unit.id).toList();
        Map<UUID, Hold> holds = Hold.openOf(unitIds).stream()
                .collect(Collectors.toMap(hold -> hold.unit.id, hold -> hold, (oldest, later) -> oldest));
        var yard = YardNotes.of(tasks, now);
        Map<String, List<Tech>> techs = new HashMap<>();
        Map<String, RainOutlook.Outlook> outlooks = rain.all(now);
        return tasks.stream()
                .map(task -> DueRow.of(
                        task,
                        holds.get(task.unit.id),
                        yard,
                        RainWords.of(outlooks.get(task.depot.code), task.depot.zoneId(), now),
                        techs.computeIfAbsent(task.depot.code, roster::techsOf),
                        now))
                .toList();
    }
}
