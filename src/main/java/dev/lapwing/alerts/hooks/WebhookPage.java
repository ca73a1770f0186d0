package dev.lapwing.alerts.hooks;

import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.DepotChoices;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** The targets, and what was delivered to each. */
@Path("/webhooks")
@RolesAllowed(Roles.COORDINATOR)
class WebhookPage {
    private static final int DELIVERIES = 50;

    /** What was typed, and what is wrong with it. */
    record Form(String address, List<String> events, String depot, List<FieldError> wrong) {
        static final Form EMPTY = new Form("", HookRows.wordsToChoose(), null, List.of());

        /** Returns what is wrong with a field, or null. */
        public String wrongIn(String field) {
            String words = wrong.stream()
                    .filter(error -> error.field().equals(field))
                    .map(FieldError::message)
                    .collect(Collectors.joining("; "));
            return words.isEmpty() ? null : words;
        }
    }

    @CheckedTemplate(basePath = "hooks")
    static class Templates {
        static native TemplateInstance webhooks(
                List<HookRows.Target> targets, Form form, List<String> events, List<DepotChoices.Choice> depots);

        static native TemplateInstance webhookMade(String address, String secret);

        static native TemplateInstance deliveries(HookRows.Target target, List<HookRows.Delivery> rows, String next);
    }

    @Inject
    Webhooks webhooks;

    @Inject
    HookRows rows;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @GET
    @Transactional
    public Response list() {
        return list(200, Form.EMPTY);
    }

    private Response list(int status, Form form) {
        return pages.show(status, Templates.webhooks(rows.targets(), form, HookRows.wordsToChoose(), shell.depots()));
    }

    /** Shows the secret at once, and never again; so nothing is redirected. */
    @POST
    @Transactional
    public Response add(@RestForm String address, @RestForm List<String> events, @RestForm String depot) {
        String wanted = depot == null || depot.isBlank() ? null : depot;
        try {
            WebhookTarget target = webhooks.add(address, events, wanted, shell.username());
            return pages.show(201, Templates.webhookMade(target.address, target.secret));
        } catch (Refused refused) {
            return list(400, new Form(address, events == null ? List.of() : events, wanted, refused.errors()));
        }
    }

    @GET
    @Path("{id}")
    @Transactional
    public Response deliveries(@RestPath String id, @RestQuery String after) {
        WebhookTarget target = WebhookTarget.require(id(id));
        WebhookDelivery last =
                after == null ? null : WebhookDelivery.require(target.id, Identifier.of("delivery", after));
        List<WebhookDelivery> found = WebhookDelivery.after(target.id, last, DELIVERIES + 1);
        boolean more = found.size() > DELIVERIES;
        List<WebhookDelivery> shown = more ? found.subList(0, DELIVERIES) : found;
        String next = more ? "/webhooks/" + id + "?after=" + shown.get(DELIVERIES - 1).id : null;
        return pages.show(Templates.deliveries(rows.of(target), rows.of(shown), next));
    }

    @POST
    @Path("{id}/test")
    public Response test(@RestPath String id) {
        return act(
                id,
                target -> webhooks.test(target, shell.username()),
                "A test is on its way: load the page again to see the answer");
    }

    @POST
    @Path("{id}/pause")
    public Response pause(@RestPath String id) {
        return act(id, webhooks::pause, "Paused: what happens is kept until you resume");
    }

    @POST
    @Path("{id}/resume")
    public Response resume(@RestPath String id) {
        return act(id, webhooks::resume, "Resumed: what waited goes now");
    }

    @POST
    @Path("{id}/remove")
    public Response remove(@RestPath String id) {
        webhooks.remove(id(id));
        return pages.go("/webhooks", "Removed: nothing is sent there any more");
    }

    private Response act(String id, Consumer<UUID> act, String done) {
        try {
            act.accept(id(id));
            return pages.go("/webhooks/" + id, done);
        } catch (Refused refused) {
            return pages.goRefused("/webhooks", refused.getMessage());
        }
    }

    @POST
    @Path("{id}/deliveries/{delivery}/resend")
    public Response resend(@RestPath String id, @RestPath String delivery) {
        try {
            webhooks.sendAgain(id(id), Identifier.of("delivery", delivery));
            return pages.go("/webhooks/" + id, "The delivery goes again");
        } catch (Refused refused) {
            return pages.goRefused("/webhooks/" + id, refused.getMessage());
        }
    }

    private static UUID id(String id) {
        return Identifier.of("webhook", id);
    }
}
