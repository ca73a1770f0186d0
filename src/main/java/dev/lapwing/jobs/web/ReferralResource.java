package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.SigningOff;
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
import org.jboss.resteasy.reactive.RestPath;

/** Stop and refer: one call ends the work, holds the unit and hands the roof over to a workshop. */
@Path("/api/tasks/{id}/stop-and-refer")
class ReferralResource {
    record Referral(String by, String why) {}

    @Inject
    SigningOff signing;

    @Inject
    SecurityIdentity identity;

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Idempotent
    public Response refer(@RestPath String id, Referral referral) {
        Referral asked = Bodies.require(referral);
        var signer = new Signer(identity.getPrincipal().getName(), identity.getRoles());
        SigningOff.SignedOff stopped = signing.refer(Identifier.of("task", id), asked.by(), asked.why(), signer);
        CareTask.flush();
        return Response.ok(SignOffResource.SignOffAnswer.of(stopped)).build();
    }
}
