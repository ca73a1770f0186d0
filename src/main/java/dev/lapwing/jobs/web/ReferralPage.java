package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.jobs.application.SigningOff;
import dev.lapwing.platform.Identifier;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;

/** The button of the sheet that stops all work on a roof. */
@Path("/tasks/{id}/stop-and-refer")
class ReferralPage {
    @Inject
    SigningOff signing;

    @Inject
    StepPages steps;

    @Inject
    SecurityIdentity identity;

    @Inject
    Shell shell;

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    public Response refer(@RestPath String id, @RestForm String by, @RestForm String why) {
        UUID task = Identifier.of("task", id);
        var signer = new Signer(identity.getPrincipal().getName(), identity.getRoles(), shell.byLink());
        return steps.endsSheet(task, new StepPages.Sent(id, by, why), () -> {
            signing.refer(task, by, why, signer);
            return "Stopped and referred to a workshop. The unit is on hold, and the coordinator is told.";
        });
    }
}
