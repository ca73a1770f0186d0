package dev.lapwing.fleet;

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
import java.net.URI;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

@Path("/api/units")
class UnitResource {
    @Inject
    RegisteringUnits registering;

    @Inject
    UnitAnswers answers;

    @Inject
    SecurityIdentity identity;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<UnitAnswer> list(@RestQuery String depot, @RestQuery Integer limit, @RestQuery String after) {
        int size = Page.limit(limit);
        List<Unit> found = Unit.after(after, depot, size + 1);
        long total = depot == null ? Unit.count() : Unit.count("depot.code", depot);
        Page<Unit> page = Page.of(found, size, total, unit -> unit.number);
        return new Page<>(answers.of(page.items()), page.total(), page.next());
    }

    @GET
    @Path("/{number}")
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public UnitAnswer one(@RestPath String number) {
        return answers.of(Unit.require(number));
    }

    @POST
    @RolesAllowed(Roles.COORDINATOR)
    @Idempotent
    public Response add(UnitRequest request) {
        Unit unit = registering.add(Bodies.require(request), by());
        URI there = URI.create("/api/units/" + unit.number.replace(" ", "%20"));
        return Response.created(there).entity(answers.of(unit)).build();
    }

    @PUT
    @Path("/{number}")
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public UnitAnswer change(@RestPath String number, UnitRequest request) {
        return answers.of(registering.change(number, Bodies.require(request), by()));
    }

    private String by() {
        return identity.getPrincipal().getName();
    }
}
