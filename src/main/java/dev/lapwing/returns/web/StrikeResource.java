package dev.lapwing.returns.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.returns.Consequences;
import dev.lapwing.returns.application.RaisingStrikes;
import dev.lapwing.returns.storage.Strike;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Idempotent;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

@Path("/api/units/{number}/strikes")
class StrikeResource {
    /** A strike that was flagged, with what followed from it. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record StrikeAnswer(UUID id, String unit, Consequences.HeldBy hold, Consequences.Work task) {}

    @Inject
    RaisingStrikes raising;

    @Inject
    Consequences consequences;

    @Inject
    SecurityIdentity identity;

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Idempotent
    public Response flag(@RestPath String number, RaisingStrikes.Sighting sighting) {
        Strike strike = raising.flag(
                number, Bodies.require(sighting), identity.getPrincipal().getName());
        Strike.flush();
        var answer = new StrikeAnswer(
                strike.id,
                strike.unit.number,
                consequences.holdOf(strike.id).orElse(null),
                consequences.workOf(strike.id).orElse(null));
        return Response.status(201).entity(answer).build();
    }
}
