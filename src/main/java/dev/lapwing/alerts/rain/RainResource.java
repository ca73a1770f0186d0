package dev.lapwing.alerts.rain;

import dev.lapwing.web.Bodies;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;

/** When the next rain is likely at each depot. */
@Path("/api/rain")
class RainResource {
    @Inject
    RainEntry entry;

    @Inject
    RainView view;

    @Inject
    SecurityIdentity identity;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    public Page<RainView.AtDepot> list() {
        List<RainView.AtDepot> all = view.all();
        return new Page<>(all, all.size(), null);
    }

    @PUT
    @Path("{depot}")
    @RolesAllowed(Roles.COORDINATOR)
    public RainView.AtDepot enter(@RestPath String depot, RainEntry.Wanted wanted) {
        entry.enter(depot, Bodies.require(wanted), identity.getPrincipal().getName());
        return view.all().stream()
                .filter(one -> one.depot().equals(depot))
                .findFirst()
                .orElseThrow();
    }

    @DELETE
    @Path("{depot}")
    @RolesAllowed(Roles.COORDINATOR)
    public void withdraw(@RestPath String depot) {
        entry.withdraw(depot);
    }
}
