package dev.lapwing.photos.web;

import dev.lapwing.photos.application.PhotoFiles;
import dev.lapwing.photos.application.TakingPhotosAway;
import dev.lapwing.photos.storage.Photo;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestPath;

/** The pictures themselves. The picture of an id never changes, so browsers may keep it for good. */
@Path("/api/photos/{id}")
class PhotoResource {
    private static final String FOR_GOOD = "private, max-age=31536000, immutable";

    record Removal(String why) {}

    @Inject
    PhotoFiles files;

    @Inject
    TakingPhotosAway takingAway;

    @Inject
    SecurityIdentity identity;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Response picture(@RestPath String id, @Context Request request) {
        return file(id, "", files::picture, request);
    }

    @GET
    @Path("/thumbnail")
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Response thumbnail(@RestPath String id, @Context Request request) {
        return file(id, "-small", files::thumbnail, request);
    }

    @POST
    @Path("/removal")
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public PhotoAnswer takeAway(@RestPath String id, Removal removal) {
        String why = Bodies.require(removal).why();
        String by = identity.getPrincipal().getName();
        return PhotoAnswer.of(takingAway.takeAway(Identifier.of("photo", id), why, by));
    }

    private static Response file(String id, String kind, Function<String, java.nio.file.Path> files, Request request) {
        Photo photo = Photo.require(Identifier.of("photo", id));
        if (photo.removedAt != null) {
            throw Refused.notFound("picture any more: the photo was taken away");
        }
        var tag = new EntityTag(photo.hash + kind);
        Response.ResponseBuilder unchanged = request.evaluatePreconditions(tag);
        Response.ResponseBuilder answer = unchanged != null
                ? unchanged
                : Response.ok(files.apply(photo.hash).toFile(), "image/jpeg")
                        .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + photo.id + kind + ".jpg\"");
        return answer.tag(tag)
                .header(HttpHeaders.CACHE_CONTROL, FOR_GOOD)
                .header("Content-Security-Policy", "default-src 'none'; sandbox")
                .build();
    }
}
