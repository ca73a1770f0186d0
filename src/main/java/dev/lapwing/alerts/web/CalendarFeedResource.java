package dev.lapwing.alerts.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.alerts.application.CalendarFeeds;
import dev.lapwing.alerts.storage.CalendarFeed;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** Makes and revokes calendar feeds: a tech their own, a coordinator any. */
@Path("/api/calendar-feeds")
class CalendarFeedResource {
    record Wanted(String tech, String depot) {}

    /** A feed; the address is there only in the answer that made it. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record FeedAnswer(UUID id, String tech, String depot, OffsetDateTime madeAt, String madeBy, String address) {
        static FeedAnswer of(CalendarFeed feed, String address) {
            return new FeedAnswer(
                    feed.id, feed.tech, feed.depotCode, feed.madeAt.atOffset(ZoneOffset.UTC), feed.madeBy, address);
        }
    }

    @Inject
    CalendarFeeds feeds;

    @Inject
    SecurityIdentity identity;

    /** The answer holds the address, which is kept nowhere; so it is not kept for repeats either. */
    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    public Response make(Wanted wanted) {
        Bodies.require(wanted);
        requireOwn(wanted.tech());
        var made = feeds.make(wanted.tech(), wanted.depot(), by());
        return Response.status(201)
                .entity(FeedAnswer.of(made.feed(), made.address()))
                .build();
    }

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Transactional
    public Page<FeedAnswer> list() {
        List<CalendarFeed> found = CalendarFeed.inForceOf(coordinator() ? null : by());
        return new Page<>(found, found.size(), null).map(feed -> FeedAnswer.of(feed, null));
    }

    @DELETE
    @Path("/{id}")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Transactional
    public void revoke(@RestPath String id) {
        CalendarFeed feed = CalendarFeed.require(Identifier.of("calendar feed", id));
        requireOwn(feed.tech);
        feeds.revoke(feed);
    }

    private void requireOwn(String tech) {
        if (!coordinator() && !by().equals(tech)) {
            throw Refused.forbidden("A tech has a calendar of their own work only");
        }
    }

    private boolean coordinator() {
        return identity.hasRole(Roles.COORDINATOR);
    }

    private String by() {
        return identity.getPrincipal().getName();
    }
}
