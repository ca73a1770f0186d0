package dev.lapwing.photos.web;

import dev.lapwing.photos.application.TakingPhotosAway;
import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.OwnPath;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;

/** The button that takes a photo away. */
@Path("/photos/{id}/removal")
class PhotoPage {
    @Inject
    TakingPhotosAway takingAway;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @POST
    @RolesAllowed(Roles.COORDINATOR)
    public Response takeAway(@RestPath String id, @RestForm String why, @RestForm String back) {
        String there = OwnPath.of(back, "/");
        try {
            takingAway.takeAway(Identifier.of("photo", id), why, shell.username());
            return pages.go(there, "The photo was taken away; that it was there stays on record");
        } catch (Refused refused) {
            return pages.goRefused(
                    there, refused.errors().isEmpty() ? refused.getMessage() : "The reason " + wrong(refused));
        }
    }

    private static String wrong(Refused refused) {
        return refused.errors().stream().map(FieldError::message).collect(Collectors.joining(", "));
    }
}
