package dev.lapwing.jobs.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.care.Signer;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.DecidingRework;
import dev.lapwing.jobs.storage.Decision;
import dev.lapwing.jobs.storage.OpenChoice;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Idempotent;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** What a sheet left to the coordinator to decide. */
@Path("/api/tasks/{id}/decision")
class DecisionResource {
    record Choosing(String choice, String reason) {}

    /** One way to go, and what speaks for it. */
    record Option(String work, List<String> speaksFor) {}

    /** What was chosen, by whom and why. */
    record Chosen(String choice, String reason, OffsetDateTime at, String by) {}

    /** What may be chosen, and what was; nothing was while {@code decided} is missing. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record DecisionAnswer(List<Option> options, Chosen decided) {}

    @Inject
    DecidingRework deciding;

    @Inject
    SecurityIdentity identity;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public DecisionAnswer show(@RestPath String id) {
        return answer(Identifier.of("task", id));
    }

    @POST
    @RolesAllowed(Roles.COORDINATOR)
    @Idempotent
    public Response decide(@RestPath String id, Choosing choosing) {
        UUID task = Identifier.of("task", id);
        Choosing asked = Bodies.require(choosing);
        var signer = new Signer(identity.getPrincipal().getName(), identity.getRoles());
        deciding.decide(task, asked.choice(), asked.reason(), signer);
        return Response.ok(answer(task)).build();
    }

    private static DecisionAnswer answer(UUID id) {
        CareTask task = CareTask.require(id);
        OpenChoice choice = OpenChoice.findById(id);
        if (choice == null) {
            throw Refused.notFound("decision on task " + id);
        }
        Decision decision = Decision.findById(id);
        return new DecisionAnswer(
                choice.options().stream()
                        .map(option -> new Option(option.work().word(), option.speaksFor()))
                        .toList(),
                decision == null
                        ? null
                        : new Chosen(
                                decision.chosen.word(),
                                decision.reason,
                                decision.decidedAt.atZone(task.depot.zoneId()).toOffsetDateTime(),
                                decision.decidedBy));
    }
}
