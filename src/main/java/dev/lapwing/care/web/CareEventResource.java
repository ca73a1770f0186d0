package dev.lapwing.care.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.care.application.ReportingEvents;
import dev.lapwing.care.domain.RoofEventKind;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.RoofEvent;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.Refused;
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
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** What happened to a unit's roof beside strikes: water inside, hail or windstorm, a part lost. */
@Path("/api/units/{number}/care-events")
class CareEventResource {
    /** An event as it is answered, with the work that answers it, if any is needed. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record EventAnswer(
            UUID id,
            String unit,
            RoofEventKind kind,
            OffsetDateTime seenAt,
            String note,
            String by,
            OffsetDateTime reportedAt,
            Work task) {}

    /** The work that answers an event. */
    record Work(UUID id, OffsetDateTime due) {}

    @Inject
    ReportingEvents reporting;

    @Inject
    SecurityIdentity identity;

    /** Lists the events of a unit, the latest reported first; the cursor is when the last one seen was reported. */
    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<EventAnswer> list(@RestPath String number, @RestQuery Integer limit, @RestQuery String after) {
        int size = Page.limit(limit);
        Unit unit = Unit.require(number);
        List<RoofEvent> found = RoofEvent.before(unit, cursor(after), size + 1);
        Page<RoofEvent> page =
                Page.of(found, size, RoofEvent.count("unit", unit), event -> event.reportedAt.toString());
        Map<UUID, CareTask> tasks =
                CareTask.ofEvents(page.items().stream().map(event -> event.id).toList());
        return page.map(event -> answer(event, tasks.get(event.id)));
    }

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Idempotent
    public Response report(@RestPath String number, ReportingEvents.Sighting sighting) {
        RoofEvent event = reporting.report(
                number, Bodies.require(sighting), identity.getPrincipal().getName());
        CareTask task = CareTask.ofEvents(List.of(event.id)).get(event.id);
        return Response.status(Response.Status.CREATED)
                .entity(answer(event, task))
                .build();
    }

    private static EventAnswer answer(RoofEvent event, CareTask task) {
        ZoneId zone = event.unit.depot.zoneId();
        return new EventAnswer(
                event.id,
                event.unit.number,
                event.kind,
                event.seenAt.atZone(zone).toOffsetDateTime(),
                event.note,
                event.reportedBy,
                event.reportedAt.atZone(zone).toOffsetDateTime(),
                task == null ? null : new Work(task.id, task.dueAt.atZone(zone).toOffsetDateTime()));
    }

    private static Instant cursor(String after) {
        if (after == null || after.isBlank()) {
            return null;
        }
        try {
            return Instant.parse(after);
        } catch (DateTimeParseException wrong) {
            throw Refused.invalid("after", "is not a cursor of this list");
        }
    }
}
