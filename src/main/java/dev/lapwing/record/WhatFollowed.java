package dev.lapwing.record;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.returns.Consequences;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;

/** Reads from the care area what a report led to. */
@ApplicationScoped
class WhatFollowed implements Consequences {
    @Override
    public Optional<HeldBy> holdOf(UUID causeId) {
        return Hold.ofCause(causeId).map(hold -> new HeldBy(hold.id));
    }

    @Override
    public Optional<Work> workOf(UUID strikeId) {
        return CareTask.ofStrike(strikeId)
                .map(task ->
                        new Work(task.id, task.dueAt.atZone(task.depot.zoneId()).toOffsetDateTime(), task.assignee));
    }
}
