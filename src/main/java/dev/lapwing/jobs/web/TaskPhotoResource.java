package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.TaskPhotoTarget;
import dev.lapwing.photos.web.PhotoAnswer;
import dev.lapwing.photos.web.PhotoUploads;
import dev.lapwing.platform.Identifier;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** Photos of the roof on the sheet of a task. */
@Path("/api/tasks/{id}/photos")
class TaskPhotoResource {
    @Inject
    TaskPhotoTarget targets;

    @Inject
    PhotoUploads uploads;

    @Inject
    SecurityIdentity identity;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<PhotoAnswer> list(@RestPath String id) {
        return PhotoAnswer.pageOf(CareTask.require(Identifier.of("task", id)).id);
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    public Response add(
            @RestPath String id,
            @RestForm String zone,
            @RestForm String finding,
            @RestForm(FileUpload.ALL) List<FileUpload> files) {
        var signer = new Signer(identity.getPrincipal().getName(), identity.getRoles());
        return uploads.answer(targets.of(Identifier.of("task", id), zone, finding, signer), files);
    }
}
