package dev.lapwing.alerts.live;

import dev.lapwing.fleet.Depot;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.web.Roles;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.ServiceUnavailableException;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.sse.Sse;
import jakarta.ws.rs.sse.SseEventSink;
import org.jboss.resteasy.reactive.RestHeader;
import org.jboss.resteasy.reactive.RestQuery;

/** The stream of what happens to work and holds, as server-sent events. */
@Path("/api/live")
class LiveResource {
    private static final long SECONDS_TO_STAY_AWAY = 30;

    @Inject
    LiveHub hub;

    /** A program that comes back says by header what it saw last; a page says by query what it shows already. */
    @GET
    @Produces(MediaType.SERVER_SENT_EVENTS)
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public void listen(
            @RestHeader("Last-Event-ID") String lastSeen,
            @RestQuery String after,
            @RestQuery String depot,
            @Context SseEventSink sink,
            @Context Sse sse) {
        var errors = new FieldErrors();
        Long place = lastSeen == null || lastSeen.isBlank()
                ? place(after, "after", errors)
                : place(lastSeen, "Last-Event-ID", errors);
        String wanted = depot == null || depot.isBlank() ? null : depot;
        errors.check(wanted == null || Depot.findById(wanted) != null, "depot", "is not the code of a depot");
        errors.refuseIfAny();
        if (!hub.add(sink, sse, wanted, place)) {
            throw new ServiceUnavailableException(SECONDS_TO_STAY_AWAY);
        }
    }

    private static Long place(String text, String field, FieldErrors errors) {
        if (text == null || text.isBlank()) {
            return null;
        }
        boolean number = errors.check(text.matches("[0-9]{1,18}"), field, "is not the id of an event");
        return number ? Long.valueOf(text) : null;
    }
}
