package dev.lapwing.alerts.hooks;

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
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

@Path("/api/webhooks")
@RolesAllowed(Roles.COORDINATOR)
class WebhookResource {
    /** A target that is wanted. */
    record Wanted(String address, List<String> events, String depot) {}

    @Inject
    Webhooks webhooks;

    @Inject
    SecurityIdentity identity;

    /** The answer holds the secret, so it is not kept for repeats. */
    @POST
    public Response add(Wanted wanted) {
        Bodies.require(wanted);
        WebhookTarget target = webhooks.add(wanted.address(), wanted.events(), wanted.depot(), by());
        return Response.status(201).entity(WebhookAnswers.withSecret(target)).build();
    }

    @GET
    @Transactional
    public Page<WebhookAnswers.Target> list() {
        List<WebhookTarget> found = WebhookTarget.present();
        return new Page<>(found, found.size(), null).map(WebhookAnswers::of);
    }

    @GET
    @Path("/{id}/deliveries")
    @Transactional
    public Page<WebhookAnswers.Delivery> deliveries(
            @RestPath String id, @RestQuery Integer limit, @RestQuery String after) {
        UUID target = WebhookTarget.require(id(id)).id;
        int size = Page.limit(limit);
        List<WebhookDelivery> found = WebhookDelivery.after(target, place(target, after), size + 1);
        Page<WebhookDelivery> page =
                Page.of(found, size, WebhookDelivery.count("targetId", target), one -> one.id.toString());
        return new Page<>(WebhookAnswers.of(page.items()), page.total(), page.next());
    }

    @POST
    @Path("/{id}/test")
    @Transactional
    public Response test(@RestPath String id) {
        WebhookDelivery delivery = webhooks.test(id(id), by());
        return Response.status(202)
                .entity(WebhookAnswers.of(List.of(delivery)).get(0))
                .build();
    }

    @POST
    @Path("/{id}/pause")
    public WebhookAnswers.Target pause(@RestPath String id) {
        return WebhookAnswers.of(webhooks.pause(id(id)));
    }

    @POST
    @Path("/{id}/resume")
    public WebhookAnswers.Target resume(@RestPath String id) {
        return WebhookAnswers.of(webhooks.resume(id(id)));
    }

    @POST
    @Path("/{id}/deliveries/{delivery}/resend")
    @Transactional
    public WebhookAnswers.Delivery resend(@RestPath String id, @RestPath String delivery) {
        WebhookDelivery again = webhooks.sendAgain(id(id), Identifier.of("delivery", delivery));
        return WebhookAnswers.of(List.of(again)).get(0);
    }

    @DELETE
    @Path("/{id}")
    public void remove(@RestPath String id) {
        webhooks.remove(id(id));
    }

    /** Returns the delivery after which to go on, or null for the start. */
    private static WebhookDelivery place(UUID target, String cursor) {
        if (cursor == null || cursor.isBlank()) {
            return null;
        }
        try {
            return WebhookDelivery.require(target, Identifier.of("delivery", cursor));
        } catch (Refused notThere) {
            throw Refused.invalid("after", "is not a cursor of this list");
        }
    }

    private static UUID id(String id) {
        return Identifier.of("webhook", id);
    }

    private String by() {
        return identity.getPrincipal().getName();
    }
}
