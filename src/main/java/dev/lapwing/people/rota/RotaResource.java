package dev.lapwing.people.rota;

import dev.lapwing.platform.Identifier;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Idempotent;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;

/** The duty rota of a depot: weekly turns, absences, swaps, who is on now, and when nobody will be. */
@Path("/api/depots/{depot}/rota")
class RotaResource {
    @Inject
    KeepingRota keeping;

    @Inject
    RotaView view;

    @Inject
    SecurityIdentity identity;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    public RotaView.Answer show(@RestPath String depot) {
        return view.of(keeping.requireDepot(depot));
    }

    @POST
    @Path("turns")
    @Idempotent
    @RolesAllowed(Roles.COORDINATOR)
    public Response addTurn(@RestPath String depot, KeepingRota.NewTurn turn) {
        return created(view.turn(keeping.add(depot, Bodies.require(turn))));
    }

    @DELETE
    @Path("turns/{id}")
    @RolesAllowed(Roles.COORDINATOR)
    public void removeTurn(@RestPath String depot, @RestPath String id) {
        keeping.requireDepot(depot);
        keeping.removeTurn(Identifier.of("turn", id));
    }

    @POST
    @Path("absences")
    @Idempotent
    @RolesAllowed(Roles.COORDINATOR)
    public Response addAbsence(@RestPath String depot, KeepingRota.NewAbsence absence) {
        return created(view.away(keeping.add(depot, Bodies.require(absence))));
    }

    @DELETE
    @Path("absences/{id}")
    @RolesAllowed(Roles.COORDINATOR)
    public void removeAbsence(@RestPath String depot, @RestPath String id) {
        keeping.requireDepot(depot);
        keeping.removeAbsence(Identifier.of("absence", id));
    }

    @POST
    @Path("swaps")
    @Idempotent
    @RolesAllowed(Roles.COORDINATOR)
    public Response addSwap(@RestPath String depot, KeepingRota.NewSwap swap) {
        String by = identity.getPrincipal().getName();
        return created(view.swapped(keeping.add(depot, Bodies.require(swap), by)));
    }

    @DELETE
    @Path("swaps/{id}")
    @RolesAllowed(Roles.COORDINATOR)
    public void removeSwap(@RestPath String depot, @RestPath String id) {
        keeping.requireDepot(depot);
        keeping.removeSwap(Identifier.of("swap", id));
    }

    private static Response created(Object stored) {
        return Response.status(201).entity(stored).build();
    }
}
