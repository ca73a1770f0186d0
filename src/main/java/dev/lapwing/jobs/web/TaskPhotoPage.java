package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.jobs.application.TaskPhotoTarget;
import dev.lapwing.photos.application.KeepingPhotos;
import dev.lapwing.photos.storage.Photo;
import dev.lapwing.photos.web.PhotoAddresses;
import dev.lapwing.photos.web.PhotoDelivery;
import dev.lapwing.photos.web.PhotoUploads;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** The photos of a sheet. All paths lie below that of the sheet: who may open it may see and add its photos. */
@Path("/tasks/{id}/sheet")
class TaskPhotoPage {
    @Inject
    TaskPhotoTarget targets;

    @Inject
    PhotoUploads uploads;

    @Inject
    SecurityIdentity identity;

    @Inject
    Pages pages;

    @Inject
    PhotoDelivery delivery;

    @POST
    @Path("/photos")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Produces(MediaType.TEXT_HTML)
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    public Response add(
            @RestPath String id,
            @RestForm String zone,
            @RestForm String finding,
            @RestForm(FileUpload.ALL) List<FileUpload> files) {
        String here = "/tasks/" + Identifier.of("task", id) + "/sheet#photos";
        try {
            int kept = uploads.keep(target(id, zone, finding), files).ids().size();
            return pages.go(here, kept == 1 ? "The photo was added" : kept + " photos were added");
        } catch (Refused refused) {
            return pages.goRefused(here, PhotoUploads.words(refused));
        }
    }

    /** The same for the script of the page, which shows how each file goes. */
    @POST
    @Path("/photos")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Produces(MediaType.APPLICATION_JSON)
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    public Response addByScript(
            @RestPath String id,
            @RestForm String zone,
            @RestForm String finding,
            @RestForm(FileUpload.ALL) List<FileUpload> files) {
        return uploads.answer(target(id, zone, finding), files, PhotoAddresses::onSheet);
    }

    private KeepingPhotos.Target target(String id, String zone, String finding) {
        var signer = new Signer(identity.getPrincipal().getName(), identity.getRoles());
        return targets.of(Identifier.of("task", id), zone, finding, signer);
    }

    @GET
    @Path("/photo")
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Response picture(
            @RestPath String id, @RestQuery("id") String photoId, @RestQuery String small, @Context Request request) {
        Photo photo = Photo.require(Identifier.of("photo", photoId == null ? "" : photoId));
        if (!photo.sourceId.equals(Identifier.of("task", id))) {
            throw Refused.notFound("photo " + photoId + " on this sheet");
        }
        return small == null ? delivery.picture(photo, request) : delivery.thumbnail(photo, request);
    }
}
