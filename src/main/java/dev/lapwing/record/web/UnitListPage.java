package dev.lapwing.record.web;

import dev.lapwing.care.storage.Hold;
import dev.lapwing.fleet.Unit;
import dev.lapwing.web.Page;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestQuery;

/** The fleet, to be searched by a part of a unit's number. */
@Path("/units")
@RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
class UnitListPage {
    private static final int PAGE = 60;

    /** One unit in the list. */
    record Row(
            String number,
            String kind,
            String depot,
            String surface,
            String footing,
            String length,
            String height,
            boolean held) {}

    @CheckedTemplate(basePath = "record")
    static class Templates {
        static native TemplateInstance units(List<Row> rows, String search, long total, String next);
    }

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @GET
    @Transactional
    public Response list(@RestQuery String search, @RestQuery String after) {
        String text = search == null ? "" : search.strip();
        String depot = shell.depot();
        List<Unit> found = Unit.page(text, depot, after, PAGE + 1);
        Page<Unit> page = Page.of(found, PAGE, Unit.countMatching(text, depot), unit -> unit.number);
        Set<UUID> held = Hold.openOf(page.items().stream().map(unit -> unit.id).toList()).stream()
                .map(hold -> hold.unit.id)
                .collect(Collectors.toSet());
        List<Row> rows = page.items().stream()
                .map(unit -> row(unit, held.contains(unit.id)))
                .toList();
        String next = page.next() == null
                ? null
                : UriBuilder.fromPath("/units")
                        .queryParam("search", "{search}")
                        .queryParam("after", "{after}")
                        .build(text, page.next())
                        .toString();
        return pages.show(Templates.units(rows, text, page.total(), next));
    }

    private static Row row(Unit unit, boolean held) {
        return new Row(
                unit.number,
                unit.kind.word(),
                unit.depot.name,
                unit.roof.surface.word(),
                unit.roof.footing.word(),
                UnitFacts.metres(unit.lengthMetres),
                UnitFacts.metres(unit.heightMetres),
                held);
    }
}
