package dev.lapwing.use.web;

import dev.lapwing.use.application.ChoosingPatterns;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;

/** Takes away a pattern that was set; one is set with the unit itself. */
@Path("/api/units/{number}/use-pattern/end")
class PatternResource {
    record End(String reason) {}

    @Inject
    ChoosingPatterns choosing;

    @Inject
    SecurityIdentity identity;

    @POST
    @RolesAllowed(Roles.COORDINATOR)
    public Response end(@RestPath String number, End end) {
        choosing.end(
                number, Bodies.require(end).reason(), identity.getPrincipal().getName());
        return Response.noContent().build();
    }
}
