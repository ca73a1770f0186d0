package dev.lapwing.fleet;

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
import java.net.URI;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

@Path("/api/depots")
class DepotResource {
    @Inject
    KeepingDepots keeping;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<DepotAnswer> list(@RestQuery Integer limit, @RestQuery String after) {
        int size = Page.limit(limit);
        return Page.of(Depot.after(after, size + 1), size, Depot.count(), depot -> depot.code)
                .map(DepotAnswer::of);
    }

    @POST
    @RolesAllowed(Roles.COORDINATOR)
    @Idempotent
    public Response add(DepotRequest request) {
        Depot depot = keeping.add(Bodies.require(request));
        return Response.created(URI.create("/api/depots/" + depot.code))
                .entity(DepotAnswer.of(depot))
                .build();
    }

    @PUT
    @Path("/{code}")
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public DepotAnswer change(@RestPath String code, DepotRequest request) {
        return DepotAnswer.of(keeping.change(code, Bodies.require(request)));
    }
}
