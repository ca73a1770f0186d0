package dev.lapwing.alerts.web;

import dev.lapwing.alerts.application.CalendarFeeds;
import dev.lapwing.platform.Refused;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;

/** Gives calendars to programs. They cannot sign in, so the address is the secret; it is long and can be revoked. */
@Path("/api/calendar")
class CalendarResource {
    private static final String ENDING = ".ics";

    @Inject
    CalendarFeeds feeds;

    @GET
    @Path("/{file}")
    @PermitAll
    public Response read(@RestPath String file) {
        if (!file.endsWith(ENDING)) {
            throw Refused.notFound("calendar with this address");
        }
        String calendar = feeds.read(file.substring(0, file.length() - ENDING.length()));
        return Response.ok(calendar, "text/calendar; charset=UTF-8")
                .header("Cache-Control", "private, no-store")
                .build();
    }
}
