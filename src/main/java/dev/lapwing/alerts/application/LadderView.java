package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.Climb;
import dev.lapwing.alerts.domain.Ladder;
import dev.lapwing.alerts.domain.LadderPace;
import dev.lapwing.alerts.storage.LadderStep;
import dev.lapwing.care.storage.CareTask;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What went to whom on the ladder of a strike, and what comes next. */
@ApplicationScoped
public class LadderView {
    /**
     * The ladder of one task.
     *
     * @param climb the climb that it is in, or empty when someone has it or nothing is left to do
     * @param taken the steps taken, in order, of earlier climbs too
     * @param ahead the steps to come while nothing changes, in order
     */
    public record State(Optional<Climb> climb, List<LadderStep> taken, List<Ladder.Step> ahead) {}

    @Inject
    LadderPaces paces;

    @Inject
    Clock clock;

    /** Returns the ladder of a strike inspection. Needs a transaction. */
    public State of(CareTask task) {
        List<UUID> id = List.of(task.id);
        LadderPace pace = paces.at(clock.instant()).of(task.depot.code);
        List<LadderStep.Latest> latest = LadderStep.latestOf(id);
        Optional<Climb> climb = Climb.of(Escalating.logs(id).get(task.id), pace);
        return new State(
                climb,
                LadderStep.of(task.id),
                climb.map(now -> Ladder.ahead(now, Escalating.steps(now, latest), pace))
                        .orElse(List.of()));
    }
}
