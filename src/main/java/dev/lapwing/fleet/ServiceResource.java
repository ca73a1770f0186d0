package dev.lapwing.fleet;

import dev.lapwing.web.Bodies;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** What happens to a unit as a whole: it leaves, comes back, gets a new roof; and who changed what is known of it. */
@Path("/api/units/{number}")
class ServiceResource {
    @Inject
    ChangingService changing;

    @Inject
    UnitAnswers answers;

    @Inject
    SecurityIdentity identity;

    @POST
    @Path("/service")
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public UnitAnswer service(@RestPath String number, ServiceRequest request) {
        return answers.of(changing.change(number, Bodies.require(request), by()));
    }

    @POST
    @Path("/roof-replacements")
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public UnitAnswer replaceRoof(@RestPath String number, RoofReplaced replaced) {
        return answers.of(changing.replaceRoof(number, Bodies.require(replaced), by()));
    }

    /** Lists what was changed in what is known of a unit, the newest first. */
    @GET
    @Path("/changes")
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<ChangeAnswer> changes(@RestPath String number, @RestQuery Integer limit, @RestQuery String after) {
        int size = Page.limit(limit);
        Unit unit = Unit.require(number);
        int leftOut = ChangeAnswer.cursor(after);
        List<UnitChange> found = UnitChange.of(unit.id, leftOut, size + 1);
        return Page.of(found, size, UnitChange.count("unitId", unit.id), last -> String.valueOf(leftOut + size))
                .map(change -> ChangeAnswer.of(change, unit.depot.zoneId()));
    }

    private String by() {
        return identity.getPrincipal().getName();
    }
}
