package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.ConfirmingMembranes;
import dev.lapwing.platform.Identifier;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Idempotent;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestPath;

/** Enters which membrane system a roof has, on the task that asks for it. */
@Path("/api/tasks/{id}/membrane")
class MembraneResource {
    record Confirmation(String system, String confirmedBy, LocalDate confirmedOn) {}

    record Overruling(String system, String source) {}

    /** What the roof's facts now say; null parts are not recorded. */
    record MembraneAnswer(
            String unit, String membraneSystem, String confirmedBy, LocalDate confirmedOn, String taskState) {}

    @Inject
    ConfirmingMembranes confirming;

    @Inject
    SecurityIdentity identity;

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Idempotent
    public Response confirm(@RestPath String id, Confirmation said) {
        Confirmation asked = Bodies.require(said);
        return answer(confirming.confirm(
                Identifier.of("task", id), asked.system(), asked.confirmedBy(), asked.confirmedOn(), signer()));
    }

    @POST
    @Path("/overrule")
    @RolesAllowed(Roles.COORDINATOR)
    @Idempotent
    public Response overrule(@RestPath String id, Overruling said) {
        Overruling asked = Bodies.require(said);
        return answer(confirming.overrule(Identifier.of("task", id), asked.system(), asked.source(), signer()));
    }

    private static Response answer(CareTask task) {
        var roof = task.unit.roof;
        var answer = new MembraneAnswer(
                task.unit.number, roof.membraneSystem, roof.confirmedBy, roof.confirmedOn, task.state.word());
        return Response.ok(answer).build();
    }

    private Signer signer() {
        return new Signer(identity.getPrincipal().getName(), identity.getRoles());
    }
}
