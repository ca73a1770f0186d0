package dev.lapwing.jobs.web;

import dev.lapwing.care.WorkWaits;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.MaterialNeeds;
import dev.lapwing.jobs.application.ReadyingRoofs;
import dev.lapwing.jobs.application.RoofLists;
import dev.lapwing.jobs.application.TimeNeeds;
import dev.lapwing.jobs.storage.RecordedEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;

/** Gathers what is answered about the roof of a task. */
@ApplicationScoped
class RoofAnswers {
    @Inject
    WorkWaits waits;

    @Inject
    RoofLists lists;

    @Inject
    ReadyingRoofs roofs;

    @Inject
    MaterialNeeds materials;

    @Inject
    TimeNeeds times;

    @Inject
    Clock clock;

    RoofAnswer of(CareTask task) {
        Instant now = clock.instant();
        ZoneId zone = task.depot.zoneId();
        var readiness = roofs.readiness(task);
        return new RoofAnswer(
                waits.of(List.of(task)).getOrDefault(task.id, List.of()).stream()
                        .map(WorkWaits.Wait::words)
                        .toList(),
                lists.cleaners(task).stream().map(RoofAnswers::item).toList(),
                lists.sealants(task, now).stream().map(RoofAnswers::item).toList(),
                at(readiness.washedAt(), zone),
                at(roofs.readyAt(readiness), zone),
                readiness.tooDirty(),
                readiness.stopped(),
                readiness.begun(),
                RecordedEvent.of(task.id).stream()
                        .map(event -> RoofAnswer.EventAnswer.of(event, zone))
                        .toList(),
                materials
                        .of(task, now)
                        .map(material -> RoofAnswer.MaterialAnswer.of(material.need(), material.tubeOf()))
                        .orElse(null),
                RoofAnswer.TimeAnswer.of(times.of(task.kind)));
    }

    private static RoofAnswer.Item item(RoofLists.Item item) {
        return new RoofAnswer.Item(item.name(), item.allowed(), item.because());
    }

    private static OffsetDateTime at(Instant instant, ZoneId zone) {
        return instant == null ? null : instant.atZone(zone).toOffsetDateTime();
    }
}
