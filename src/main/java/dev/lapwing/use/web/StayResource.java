package dev.lapwing.use.web;

import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.Identifier;
import dev.lapwing.use.application.LoggingStays;
import dev.lapwing.use.application.StayEntry;
import dev.lapwing.use.storage.Stay;
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
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

@Path("/api/units/{number}/stays")
class StayResource {
    @Inject
    LoggingStays logging;

    @Inject
    SecurityIdentity identity;

    /** Lists the stays of a unit, latest first; the cursor is the start of the last one seen. */
    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<StayAnswer> list(@RestPath String number, @RestQuery Integer limit, @RestQuery String after) {
        int size = Page.limit(limit);
        Unit unit = Unit.require(number);
        List<Stay> found = Stay.before(unit, LogCursor.read(after), size + 1);
        return Page.of(found, size, Stay.count("unit", unit), stay -> stay.fromAt.toString())
                .map(StayAnswer::of);
    }

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK})
    @Idempotent
    public Response add(@RestPath String number, StayEntry entry) {
        Stay stay = logging.add(number, Bodies.require(entry), by());
        return Response.status(Response.Status.CREATED)
                .entity(StayAnswer.of(stay))
                .build();
    }

    @PUT
    @Path("/{id}")
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK})
    @Transactional
    public StayAnswer change(@RestPath String number, @RestPath String id, StayEntry entry) {
        return StayAnswer.of(logging.change(number, Identifier.of("stay", id), Bodies.require(entry), by()));
    }

    private String by() {
        return identity.getPrincipal().getName();
    }
}
