package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.ReadyingRoofs;
import dev.lapwing.jobs.application.UsingSealants;
import dev.lapwing.jobs.storage.RecordedEvent;
import dev.lapwing.platform.Identifier;
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
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** What is done on the roof of a task beside noting findings. */
@Path("/api/tasks/{id}/roof")
class RoofResource {
    record CleanerUse(String cleaner, String makerStatement) {}

    record Dirt(String note) {}

    record Wash(String cleaner, String makerStatement, OffsetDateTime washedAt) {}

    record SealantUse(String sealant) {}

    record Treatment(Boolean held, String words) {}

    @Inject
    RoofAnswers answers;

    @Inject
    ReadyingRoofs roofs;

    @Inject
    UsingSealants sealants;

    @Inject
    SecurityIdentity identity;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public RoofAnswer show(@RestPath String id) {
        return answers.of(CareTask.require(taskId(id)));
    }

    @POST
    @Path("/cleaners")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Idempotent
    public Response cleaner(@RestPath String id, CleanerUse use) {
        CleanerUse asked = Bodies.require(use);
        return noted(roofs.useCleaner(taskId(id), asked.cleaner(), asked.makerStatement(), signer()));
    }

    @POST
    @Path("/too-dirty")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Idempotent
    public Response tooDirty(@RestPath String id, Dirt dirt) {
        return noted(roofs.tooDirty(taskId(id), dirt == null ? null : dirt.note(), signer()));
    }

    @POST
    @Path("/wash")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Idempotent
    public Response washed(@RestPath String id, Wash wash) {
        Wash asked = wash == null ? new Wash(null, null, null) : wash;
        var at = asked.washedAt() == null ? null : asked.washedAt().toInstant();
        return noted(roofs.washed(taskId(id), asked.cleaner(), asked.makerStatement(), at, signer()));
    }

    @POST
    @Path("/inspection")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Idempotent
    public Response begin(@RestPath String id, ReadyingRoofs.Beginning beginning) {
        return noted(roofs.begin(taskId(id), Bodies.require(beginning), signer()));
    }

    @POST
    @Path("/sealants")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Idempotent
    public Response sealant(@RestPath String id, SealantUse use) {
        return noted(sealants.use(taskId(id), Bodies.require(use).sealant(), signer()));
    }

    @POST
    @Path("/treatments")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Idempotent
    public Response treated(@RestPath String id, Treatment treatment) {
        Treatment asked = Bodies.require(treatment);
        return noted(sealants.treated(taskId(id), asked.held(), asked.words(), signer()));
    }

    private static Response noted(RecordedEvent event) {
        var zone = CareTask.require(event.taskId).depot.zoneId();
        return Response.status(201)
                .entity(RoofAnswer.EventAnswer.of(event, zone))
                .build();
    }

    private Signer signer() {
        return new Signer(identity.getPrincipal().getName(), identity.getRoles());
    }

    private static UUID taskId(String id) {
        return Identifier.of("task", id);
    }
}
