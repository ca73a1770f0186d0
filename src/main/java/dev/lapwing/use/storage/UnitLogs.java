package dev.lapwing.use.storage;

import dev.lapwing.use.domain.LogKind;
import dev.lapwing.use.domain.LogSpan;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Reads the logs of many units together. */
public final class UnitLogs {
    private UnitLogs() {}

    /**
     * Returns what the logs of units say from an instant on: rentals, storage and workshop that end after it or have no
     * end. Two statements, whatever the number of units; a unit of which nothing is logged is left out.
     */
    public static Map<UUID, List<LogSpan>> since(Collection<UUID> unitIds, Instant instant) {
        Map<UUID, List<LogSpan>> logs = new HashMap<>();
        for (Rental rental : Rental.endingAfter(unitIds, instant)) {
            add(logs, rental.unit.id, new LogSpan(LogKind.RENTAL, rental.outAt, rental.backAt));
        }
        for (Stay stay : Stay.endingAfter(unitIds, instant)) {
            add(logs, stay.unit.id, new LogSpan(stay.kind, stay.fromAt, stay.untilAt));
        }
        return logs;
    }

    private static void add(Map<UUID, List<LogSpan>> logs, UUID unitId, LogSpan span) {
        logs.computeIfAbsent(unitId, none -> new ArrayList<>()).add(span);
    }
}
