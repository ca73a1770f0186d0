package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.SigningOff;
import dev.lapwing.jobs.domain.sheet.SignOffEntry;
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
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

@Path("/api/tasks/{id}/sign-off")
class SignOffResource {
    /** What a sign-off led to, as it is answered. */
    record SignOffAnswer(String verdict, List<UUID> followUps, boolean released, List<String> reasons) {
        static SignOffAnswer of(SigningOff.SignedOff signed) {
            return new SignOffAnswer(
                    signed.sheet().verdict.word(), signed.followUps(), signed.released(), signed.reasons());
        }
    }

    @Inject
    SigningOff signing;

    @Inject
    SecurityIdentity identity;

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Idempotent
    public Response signOff(@RestPath String id, SignOffEntry entry) {
        var signer = new Signer(identity.getPrincipal().getName(), identity.getRoles());
        SigningOff.SignedOff signed = signing.signOff(Identifier.of("task", id), Bodies.require(entry), signer);
        CareTask.flush();
        return Response.ok(SignOffAnswer.of(signed)).build();
    }
}
