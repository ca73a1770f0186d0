package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.jobs.application.DecidingRework;
import dev.lapwing.platform.Identifier;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;

/** The form on which the coordinator chooses between rework and replacement. */
@Path("/tasks/{id}/decision")
class DecisionPage {
    @Inject
    DecidingRework deciding;

    @Inject
    StepPages steps;

    @Inject
    SecurityIdentity identity;

    @POST
    @RolesAllowed(Roles.COORDINATOR)
    public Response decide(@RestPath String id, @RestForm String choice, @RestForm String reason) {
        UUID task = Identifier.of("task", id);
        var signer = new Signer(identity.getPrincipal().getName(), identity.getRoles());
        return steps.does("/tasks/" + task, () -> {
            String chosen = deciding.decide(task, choice, reason, signer).chosen.word();
            return "Decided: " + chosen.replace('-', ' ');
        });
    }
}
