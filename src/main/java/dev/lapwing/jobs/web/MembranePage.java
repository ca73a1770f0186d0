package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.jobs.application.ConfirmingMembranes;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Identifier;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;

/** The forms on which the membrane system of a roof is confirmed or vouched for. */
@Path("/tasks/{id}/membrane")
class MembranePage {
    @Inject
    ConfirmingMembranes confirming;

    @Inject
    StepPages steps;

    @Inject
    SecurityIdentity identity;

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    public Response confirm(
            @RestPath String id, @RestForm String system, @RestForm String confirmedBy, @RestForm String confirmedOn) {
        UUID task = Identifier.of("task", id);
        return steps.does("/tasks/" + task, () -> {
            confirming.confirm(task, system, confirmedBy, day(confirmedOn), signer());
            return "The membrane system is confirmed. Sealant work can begin.";
        });
    }

    @POST
    @Path("overrule")
    @RolesAllowed(Roles.COORDINATOR)
    public Response overrule(@RestPath String id, @RestForm String system, @RestForm String source) {
        UUID task = Identifier.of("task", id);
        return steps.does("/tasks/" + task, () -> {
            confirming.overrule(task, system, source, signer());
            return "Overruled, on your word. Sealant work can begin.";
        });
    }

    private static LocalDate day(String typed) {
        var errors = new FieldErrors();
        LocalDate day = errors.read(typed, text -> LocalDate.parse(text.strip()), "confirmedOn", "is not a date");
        errors.refuseIfAny();
        return day;
    }

    private Signer signer() {
        return new Signer(identity.getPrincipal().getName(), identity.getRoles());
    }
}
