package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.Climb;
import dev.lapwing.alerts.domain.Ladder;
import dev.lapwing.alerts.domain.Rung;
import dev.lapwing.alerts.storage.LadderStep;
import dev.lapwing.care.storage.CareTask;
import io.quarkus.hibernate.orm.panache.Panache;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.List;

/** Notes the first rung of a climb that begins with the very mails that tell of the work. */
@ApplicationScoped
class FirstRung {
    @Inject
    LadderPaces paces;

    @Inject
    Clock clock;

    /** Notes who was told of a strike inspection; nothing when the climb it is in began earlier. */
    void taken(CareTask task, String told) {
        // The log entry that begins the climb belongs to this transaction and may not be written yet.
        Panache.getEntityManager().flush();
        Instant now = clock.instant();
        List<Climb.Moment> log = Escalating.logs(List.of(task.id)).get(task.id);
        Climb.of(log, paces.at(now).of(task.depot.code))
                .ifPresent(climb ->
                        LadderStep.claim(task.id, climb, new Ladder.Step(Rung.TOLD, 0, climb.since()), now, told));
    }
}
