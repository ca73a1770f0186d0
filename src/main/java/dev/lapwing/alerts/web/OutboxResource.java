package dev.lapwing.alerts.web;

import dev.lapwing.alerts.application.Outbox;
import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.storage.OutboxList;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

@Path("/api/outbox")
class OutboxResource {
    @Inject
    Outbox outbox;

    @GET
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public Page<OutboxItem> list(@RestQuery String state, @RestQuery Integer limit, @RestQuery String after) {
        var errors = new FieldErrors();
        MailState wanted = errors.word(MailState.class, state, "state").orElse(null);
        errors.refuseIfAny();
        int size = Page.limit(limit);
        List<OutboxMail> found = OutboxList.after(place(after), wanted, size + 1);
        return Page.of(found, size, OutboxList.countIn(wanted), mail -> mail.id.toString())
                .map(OutboxItem::of);
    }

    @POST
    @Path("/{id}/resend")
    @RolesAllowed(Roles.COORDINATOR)
    public OutboxItem resend(@RestPath String id) {
        return OutboxItem.of(outbox.sendAgain(Identifier.of("mail", id)));
    }

    /** Returns the mail after which to go on, or null for the start. */
    private static OutboxMail place(String cursor) {
        if (cursor == null || cursor.isBlank()) {
            return null;
        }
        return id(cursor)
                .flatMap(last -> OutboxMail.<OutboxMail>findByIdOptional(last))
                .orElseThrow(() -> Refused.invalid("after", "is not a cursor of this list"));
    }

    private static Optional<UUID> id(String cursor) {
        try {
            return Optional.of(UUID.fromString(cursor));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }
}
