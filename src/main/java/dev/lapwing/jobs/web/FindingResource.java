package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.RecordingFindings;
import dev.lapwing.jobs.domain.finding.FindingEntry;
import dev.lapwing.jobs.storage.RecordedFinding;
import dev.lapwing.platform.Identifier;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Idempotent;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

@Path("/api/tasks/{id}/findings")
class FindingResource {
    @Inject
    RecordingFindings recording;

    @Inject
    SecurityIdentity identity;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<FindingAnswer> list(@RestPath String id) {
        CareTask task = CareTask.require(Identifier.of("task", id));
        return answer(RecordedFinding.of(task.id), task);
    }

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Idempotent
    public Response record(@RestPath String id, List<FindingEntry> entries) {
        UUID taskId = Identifier.of("task", id);
        var signer = new Signer(identity.getPrincipal().getName(), identity.getRoles());
        List<RecordedFinding> recorded = recording.record(taskId, Bodies.require(entries), signer);
        return Response.status(201)
                .entity(answer(recorded, CareTask.require(taskId)))
                .build();
    }

    private static Page<FindingAnswer> answer(List<RecordedFinding> findings, CareTask task) {
        ZoneId zone = task.depot.zoneId();
        return new Page<>(
                findings.stream()
                        .map(finding -> FindingAnswer.of(finding, zone))
                        .toList(),
                findings.size(),
                null);
    }
}
