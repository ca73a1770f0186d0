package dev.lapwing.photos.web;

import dev.lapwing.photos.application.TakingPhotosAway;
import dev.lapwing.photos.storage.Photo;
import dev.lapwing.platform.Identifier;
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
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;

/** The pictures themselves, and the way to take one away. */
@Path("/api/photos/{id}")
class PhotoResource {
    record Removal(String why) {}

    @Inject
    PhotoDelivery delivery;

    @Inject
    TakingPhotosAway takingAway;

    @Inject
    SecurityIdentity identity;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Response picture(@RestPath String id, @Context Request request) {
        return delivery.picture(Photo.require(Identifier.of("photo", id)), request);
    }

    @GET
    @Path("/thumbnail")
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Response thumbnail(@RestPath String id, @Context Request request) {
        return delivery.thumbnail(Photo.require(Identifier.of("photo", id)), request);
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
}
