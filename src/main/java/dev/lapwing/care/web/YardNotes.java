package dev.lapwing.care.web;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.use.domain.GapNote;
import dev.lapwing.use.domain.LogKind;
import dev.lapwing.use.domain.LogSpan;
import dev.lapwing.use.domain.YardGaps;
import dev.lapwing.use.storage.UnitLogs;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Where the units of some tasks are, and when they go out next; read for all of them together. */
final class YardNotes {
    private final Map<UUID, List<LogSpan>> logs;
    private final Instant now;

    private YardNotes(Map<UUID, List<LogSpan>> logs, Instant now) {
        this.logs = logs;
        this.now = now;
    }

    static YardNotes of(List<CareTask> tasks, Instant now) {
        return new YardNotes(
                UnitLogs.since(
                        tasks.stream().map(task -> task.unit.id).distinct().toList(), now),
                now);
    }

    /** Returns when the unit of a task is booked to go out next, or null when nothing is booked. */
    Instant pickup(CareTask task) {
        return log(task).stream()
                .filter(span -> span.kind() == LogKind.RENTAL)
                .map(LogSpan::from)
                .filter(now::isBefore)
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    /** Returns where the unit of a task is and whether the work fits in before it goes. */
    String note(CareTask task) {
        return GapNote.of(YardGaps.from(now, log(task)), now, task.due, task.late, task.depot.zoneId());
    }

    private List<LogSpan> log(CareTask task) {
        return logs.getOrDefault(task.unit.id, List.of());
    }
}
