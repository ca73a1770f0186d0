package dev.lapwing.record.web;

import dev.lapwing.audit.storage.AuditEntry;
import dev.lapwing.fleet.Unit;
import dev.lapwing.web.Dates;
import dev.lapwing.web.Page;
import dev.lapwing.web.Pages;
import dev.lapwing.web.PersonNames;
import dev.lapwing.web.Roles;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** The audit of a unit as a page: who changed what, from what to what. */
@Path("/units/{number}/changes")
@RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
class ChangesPage {
    private static final int AT_ONCE = 50;

    /** One change. */
    record Line(String when, String who, String what, String from, String to) {}

    /** The page; {@code next} is where the next one goes on, or null at the end. */
    record View(String number, long total, List<Line> lines, String next) {}

    @CheckedTemplate(basePath = "record")
    static class Templates {
        static native TemplateInstance changes(View view);
    }

    @Inject
    PersonNames names;

    @Inject
    Pages pages;

    @GET
    @Transactional
    public Response show(@RestPath String number, @RestQuery String after) {
        Unit unit = Unit.require(number);
        List<AuditEntry> found = AuditEntry.ofUnit(unit.id, AuditCursor.place(after), AT_ONCE + 1);
        var page = Page.of(found, AT_ONCE, AuditEntry.countOf(unit.id), entry -> entry.position.toString());
        List<Line> lines = page.items().stream()
                .map(entry -> new Line(
                        Dates.time(entry.at, unit.depot.zoneId()),
                        names.of(entry.who),
                        entry.what,
                        entry.was,
                        entry.became))
                .toList();
        return pages.show(Templates.changes(new View(unit.number, page.total(), lines, page.next())));
    }
}
