package dev.lapwing.use.web;

import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.Identifier;
import dev.lapwing.use.application.LoggingRentals;
import dev.lapwing.use.application.RentalEntry;
import dev.lapwing.use.storage.Rental;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Idempotent;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
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

@Path("/api/units/{number}/rentals")
class RentalResource {
    @Inject
    LoggingRentals logging;

    /** Lists the rentals of a unit, latest first; the cursor is the start of the last one seen. */
    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<RentalAnswer> list(@RestPath String number, @RestQuery Integer limit, @RestQuery String after) {
        int size = Page.limit(limit);
        Unit unit = Unit.require(number);
        List<Rental> found = Rental.before(unit, LogCursor.read(after), size + 1);
        return Page.of(found, size, Rental.count("unit", unit), rental -> rental.outAt.toString())
                .map(RentalAnswer::of);
    }

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK})
    @Idempotent
    public Response add(@RestPath String number, RentalEntry entry) {
        Rental rental = logging.add(number, Bodies.require(entry));
        return Response.status(Response.Status.CREATED)
                .entity(RentalAnswer.of(rental))
                .build();
    }

    @PUT
    @Path("/{id}")
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK})
    @Transactional
    public RentalAnswer change(@RestPath String number, @RestPath String id, RentalEntry entry) {
        return RentalAnswer.of(logging.change(number, Identifier.of("rental", id), Bodies.require(entry)));
    }
}
