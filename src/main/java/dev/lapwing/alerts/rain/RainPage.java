package dev.lapwing.alerts.rain;

import dev.lapwing.platform.Refused;
import dev.lapwing.web.Dates;
import dev.lapwing.web.FieldMessages;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import dev.lapwing.web.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.OffsetDateTime;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;

/** What is known of the rain at each depot; the coordinator enters what no feed knows. */
@Path("/rain")
@RolesAllowed(Roles.COORDINATOR)
class RainPage {
    /** One depot in words, with times local to it; what was typed and refused is its own if it is mine. */
    record Row(RainView.AtDepot known, String rainAt, String until, String issued, boolean mine) {}

    /** What was typed for one depot and refused. */
    record Entered(String depot, String rainAt, String holdsHours) {}

    @CheckedTemplate(basePath = "alerts")
    static class Templates {
        static native TemplateInstance rain(List<Row> rows, Entered typed, FieldMessages wrong);
    }

    @Inject
    RainEntry entry;

    @Inject
    RainView view;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @GET
    public Response show() {
        return page(200, new Entered("", "", ""), FieldMessages.NONE);
    }

    @POST
    @Path("{depot}")
    public Response enter(@RestPath String depot, @RestForm String rainAt, @RestForm String holdsHours) {
        try {
            entry.enter(depot, new RainEntry.Wanted(rainAt, Typed.fromOne(holdsHours)), shell.username());
            return pages.go("/rain", "Done: this counts until it runs out");
        } catch (Refused refused) {
            if (refused.kind() != Refused.Kind.INVALID) {
                throw refused;
            }
            return page(400, new Entered(depot, rainAt, holdsHours), FieldMessages.of(refused));
        }
    }

    @POST
    @Path("{depot}/withdrawal")
    public Response withdraw(@RestPath String depot) {
        entry.withdraw(depot);
        return pages.go("/rain", "Done: the feed counts again");
    }

    private Response page(int status, Entered typed, FieldMessages wrong) {
        List<Row> rows = view.all().stream()
                .map(known -> new Row(
                        known,
                        words(known.rainAt()),
                        words(known.until()),
                        words(known.issued()),
                        known.depot().equals(typed.depot())))
                .toList();
        return pages.show(status, Templates.rain(rows, typed, wrong));
    }

    private static String words(OffsetDateTime at) {
        return at == null ? null : Dates.time(at.toInstant(), at.getOffset());
    }
}
