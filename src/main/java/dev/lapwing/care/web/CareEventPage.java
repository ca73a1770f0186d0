package dev.lapwing.care.web;

import dev.lapwing.care.application.ReportingEvents;
import dev.lapwing.care.domain.RoofEventKind;
import dev.lapwing.fleet.Unit;
import dev.lapwing.web.Form;
import dev.lapwing.web.Form.Choice;
import dev.lapwing.web.Form.Input;
import dev.lapwing.web.Forms;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import dev.lapwing.web.Typed;
import dev.lapwing.web.UnitPaths;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestPath;

/** The form on which anyone notes water inside, hail or a windstorm, or a part lost from a roof. */
@Path("/units/{number}/care-events/new")
@RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
class CareEventPage {
    @Inject
    ReportingEvents reporting;

    @Inject
    Forms forms;

    @Inject
    Shell shell;

    @Inject
    Clock clock;

    @GET
    @Transactional
    public Response show(@RestPath String number) {
        Unit unit = Unit.require(number);
        String now = clock.instant()
                .atZone(unit.depot.zoneId())
                .toLocalDateTime()
                .truncatedTo(ChronoUnit.MINUTES)
                .toString();
        return forms.show(form(unit.number), Map.of("seenAt", now));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response report(@RestPath String number, MultivaluedMap<String, String> sent) {
        Unit unit = Unit.require(number);
        return forms.take(form(unit.number), Forms.values(sent), typed -> {
            var event = reporting.report(number, sighting(typed, unit.depot.zoneId()), shell.username());
            return "Done: " + event.kind.word() + " of " + unit.number + " noted; its inspection stands under Next";
        });
    }

    private static ReportingEvents.Sighting sighting(Typed typed, ZoneId zone) {
        OffsetDateTime seenAt = typed.time("seenAt", zone);
        typed.refuseIfWrong();
        return new ReportingEvents.Sighting(typed.text("kind"), seenAt, typed.text("note"), typed.text("by"));
    }

    private static Form form(String number) {
        List<Choice> kinds = Stream.of(RoofEventKind.values())
                .map(kind -> new Choice(kind.word(), kind.label()))
                .toList();
        return new Form(
                "Something happened to the roof of " + number,
                "not a strike: a branch or barrier that touched it is reported as a return",
                UnitPaths.page(number),
                UnitPaths.page(number) + "/care-events/new",
                "Report",
                List.of(
                        Input.select("kind", "What", kinds, null),
                        Input.time("seenAt", "When", "When it happened or was noticed, local time of the depot"),
                        Input.area("note", "What was seen", "Nobody goes up to look until the inspection"),
                        Input.text("by", "Who noticed it", "Empty: you")));
    }
}
