package dev.lapwing.care.web;

import dev.lapwing.care.application.SweepTimetable;
import dev.lapwing.care.storage.SweepRun;
import dev.lapwing.fleet.Depot;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Idempotent;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.quartz.SchedulerException;

@Path("/api/sweeps")
class SweepResource {
    record Ask(String depot) {}

    record Asked(UUID id) {}

    record Failure(String unit, String message) {}

    record SweepAnswer(
            UUID id,
            String depot,
            SweepRun.Cause cause,
            SweepRun.State state,
            int unitsInAll,
            int units,
            int created,
            int calledOff,
            List<Failure> failed,
            String error) {}

    @Inject
    SweepTimetable timetable;

    @Inject
    SecurityIdentity identity;

    @POST
    @RolesAllowed(Roles.COORDINATOR)
    @Idempotent
    public Response ask(Ask ask) throws SchedulerException {
        String depot = ask == null ? null : ask.depot();
        if (depot != null && Depot.findById(depot) == null) {
            throw Refused.invalid("depot", "is not the code of a depot");
        }
        SweepRun run = timetable.ask(
                depot, SweepRun.Cause.ASKED, identity.getPrincipal().getName());
        return Response.accepted(new Asked(run.id)).build();
    }

    @GET
    @Path("/{id}")
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public SweepAnswer one(@RestPath String id) {
        SweepRun run = SweepRun.require(Identifier.of("sweep", id));
        List<Failure> failed = run.failures.entrySet().stream()
                .map(failure -> new Failure(failure.getKey(), failure.getValue()))
                .toList();
        return new SweepAnswer(
                run.id,
                run.depotCode,
                run.cause,
                run.state,
                run.unitsInAll,
                run.units,
                run.created,
                run.calledOff,
                failed,
                run.error);
    }
}
