package dev.lapwing.alerts.web;

import dev.lapwing.alerts.application.Outbox;
import dev.lapwing.alerts.domain.MailState;
import dev.lapwing.alerts.storage.OutboxList;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Dates;
import dev.lapwing.web.Page;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** The mails that went, wait or failed, the newest first. */
@Path("/outbox")
@RolesAllowed(Roles.COORDINATOR)
class OutboxPage {
    private static final int PAGE = 50;

    /** One mail in the list; times are in UTC. */
    record Row(
            UUID id,
            String to,
            String subject,
            String state,
            String written,
            String sent,
            int attempts,
            String lastError,
            UUID task,
            boolean canGoAgain) {}

    /** How many mails are in one state, or in all when the word is empty. */
    record Count(String word, long number) {}

    @CheckedTemplate(basePath = "mails")
    static class Templates {
        static native TemplateInstance outbox(List<Row> rows, List<Count> counts, String state, String next);
    }

    @Inject
    Outbox outbox;

    @Inject
    Pages pages;

    @GET
    @Transactional
    public Response list(@RestQuery String state, @RestQuery String after) {
        var errors = new FieldErrors();
        MailState wanted = errors.word(MailState.class, state, "state").orElse(null);
        errors.refuseIfAny();
        OutboxMail last = after == null ? null : OutboxMail.findById(Identifier.of("mail", after));
        Page<OutboxMail> page = Page.of(
                OutboxList.after(last, wanted, PAGE + 1), PAGE, OutboxList.countIn(wanted), mail -> mail.id.toString());
        List<Row> rows = page.items().stream().map(OutboxPage::row).toList();
        String word = wanted == null ? "" : wanted.word();
        String next =
                page.next() == null ? null : "/outbox?state=" + word.replace(" ", "%20") + "&after=" + page.next();
        return pages.show(Templates.outbox(rows, counts(), word, next));
    }

    @POST
    @Path("{id}/resend")
    public Response resend(@RestPath String id) {
        try {
            OutboxMail mail = outbox.sendAgain(Identifier.of("mail", id));
            return pages.go("/outbox", "Done: the mail to " + mail.recipient + " goes again");
        } catch (Refused refused) {
            return pages.goRefused("/outbox", refused.getMessage());
        }
    }

    private static List<Count> counts() {
        List<Count> counts = new ArrayList<>();
        for (MailState state : MailState.values()) {
            counts.add(new Count(state.word(), OutboxList.countIn(state)));
        }
        counts.add(new Count("", OutboxList.countIn(null)));
        return counts;
    }

    private static Row row(OutboxMail mail) {
        return new Row(
                mail.id,
                mail.recipient,
                mail.subject,
                mail.state.word(),
                Dates.time(mail.createdAt, ZoneOffset.UTC),
                Dates.time(mail.sentAt, ZoneOffset.UTC),
                mail.attempts,
                mail.lastError,
                mail.taskId,
                mail.state == MailState.GIVEN_UP);
    }
}
