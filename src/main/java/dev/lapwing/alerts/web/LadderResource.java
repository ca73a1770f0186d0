package dev.lapwing.alerts.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.alerts.application.LadderView;
import dev.lapwing.alerts.domain.Climb;
import dev.lapwing.alerts.domain.Rung;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Roles;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;

/** The ladder of a strike inspection: what went to whom, and what comes next. */
@Path("/api/tasks/{id}/ladder")
class LadderResource {
    record Taken(int climb, Rung rung, int turn, Climb.Reason reason, OffsetDateTime at, String told) {}

    record Ahead(Rung rung, int turn, OffsetDateTime at) {}

    /** @param waiting what is wanting, or absent when nobody more is called */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Answer(Climb.Reason waiting, OffsetDateTime since, List<Taken> taken, List<Ahead> ahead) {}

    @Inject
    LadderView ladder;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Answer show(@RestPath String id) {
        CareTask task = CareTask.require(Identifier.of("task", id));
        if (task.kind != TaskKind.STRIKE_INSPECTION) {
            throw Refused.notFound("ladder of task " + id + ", which is no strike inspection");
        }
        LadderView.State state = ladder.of(task);
        return new Answer(
                state.climb().map(Climb::reason).orElse(null),
                state.climb().map(climb -> at(climb.from(), task)).orElse(null),
                state.taken().stream()
                        .map(step -> new Taken(
                                step.climb, step.rung, step.turn, step.reason, at(step.takenAt, task), step.told))
                        .toList(),
                state.ahead().stream()
                        .map(step -> new Ahead(step.rung(), step.turn(), at(step.at(), task)))
                        .toList());
    }

    private static OffsetDateTime at(Instant instant, CareTask task) {
        return instant.atZone(task.depot.zoneId()).toOffsetDateTime();
    }
}
