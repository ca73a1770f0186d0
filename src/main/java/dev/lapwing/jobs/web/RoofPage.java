package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.jobs.application.ReadyingRoofs;
import dev.lapwing.jobs.application.UsingSealants;
import dev.lapwing.jobs.storage.RecordedEvent;
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

/** The forms of a sheet for wash, drying and sealant. */
@Path("/tasks/{id}/roof")
@RolesAllowed({Roles.COORDINATOR, Roles.TECH})
class RoofPage {
    @Inject
    ReadyingRoofs roofs;

    @Inject
    UsingSealants sealants;

    @Inject
    StepPages steps;

    @Inject
    SecurityIdentity identity;

    @Inject
    Shell shell;

    @POST
    @Path("wash")
    public Response washed(@RestPath String id, @RestForm String cleaner, @RestForm String makerStatement) {
        UUID task = taskId(id);
        return steps.does(sheet(task, "wash"), () -> said(roofs.washed(task, cleaner, makerStatement, null, signer())));
    }

    @POST
    @Path("too-dirty")
    public Response tooDirty(@RestPath String id) {
        UUID task = taskId(id);
        return steps.does(sheet(task, "wash"), () -> said(roofs.tooDirty(task, null, signer())));
    }

    @POST
    @Path("inspection")
    public Response begin(@RestPath String id, @RestForm String wet, @RestForm String windy, @RestForm String reason) {
        UUID task = taskId(id);
        var beginning = new ReadyingRoofs.Beginning("yes".equals(wet), "yes".equals(windy), false, reason);
        return steps.does(sheet(task, "wash"), () -> said(roofs.begin(task, beginning, signer())));
    }

    @POST
    @Path("sealants")
    public Response sealant(@RestPath String id, @RestForm String sealant) {
        UUID task = taskId(id);
        return steps.does(sheet(task, "sealant"), () -> said(sealants.use(task, sealant, signer())));
    }

    @POST
    @Path("treatments")
    public Response treated(@RestPath String id, @RestForm String held, @RestForm String words) {
        UUID task = taskId(id);
        return steps.does(
                sheet(task, "sealant"), () -> said(sealants.treated(task, "yes".equals(held), words, signer())));
    }

    private static String said(RecordedEvent noted) {
        return "Noted. " + noted.event().inWords();
    }

    private static String sheet(UUID task, String place) {
        return "/tasks/" + task + "/sheet#" + place;
    }

    private Signer signer() {
        return new Signer(identity.getPrincipal().getName(), identity.getRoles(), shell.byLink());
    }

    private static UUID taskId(String id) {
        return Identifier.of("task", id);
    }
}
