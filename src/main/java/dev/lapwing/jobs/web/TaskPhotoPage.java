package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.jobs.application.TaskPhotoTarget;
import dev.lapwing.photos.web.PhotoUploads;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** The photo form of a sheet, for browsers that run no scripts. */
@Path("/tasks/{id}/sheet/photos")
class TaskPhotoPage {
    @Inject
    TaskPhotoTarget targets;

    @Inject
    PhotoUploads uploads;

    @Inject
    SecurityIdentity identity;

    @Inject
    Pages pages;

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    public Response add(
            @RestPath String id,
            @RestForm String zone,
            @RestForm String finding,
            @RestForm(FileUpload.ALL) List<FileUpload> files) {
        UUID task = Identifier.of("task", id);
        String here = "/tasks/" + task + "/sheet#photos";
        var signer = new Signer(identity.getPrincipal().getName(), identity.getRoles());
        try {
            int kept = uploads.keep(targets.of(task, zone, finding, signer), files)
                    .ids()
                    .size();
            return pages.go(here, kept == 1 ? "The photo was added" : kept + " photos were added");
        } catch (Refused refused) {
            return pages.goRefused(here, PhotoUploads.words(refused));
        }
    }
}
