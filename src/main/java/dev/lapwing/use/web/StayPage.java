package dev.lapwing.use.web;

import dev.lapwing.fleet.Storage;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.Identifier;
import dev.lapwing.use.application.LoggingStays;
import dev.lapwing.use.application.StayEntry;
import dev.lapwing.use.domain.LogKind;
import dev.lapwing.use.storage.Stay;
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
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The forms on which a stay in storage or in the workshop is noted and ended. */
@Path("/units/{number}/stays")
@RolesAllowed({Roles.COORDINATOR, Roles.DESK})
class StayPage {
    @Inject
    LoggingStays logging;

    @Inject
    Forms forms;

    @Inject
    Shell shell;

    @Inject
    Clock clock;

    @GET
    @Path("/new")
    @Transactional
    public Response create(@RestPath String number) {
        Unit unit = Unit.require(number);
        Map<String, String> values =
                Map.of("kind", LogKind.STORAGE.word(), "from", local(clock.instant(), unit.depot.zoneId()));
        return forms.show(form(unit.number, "new"), values);
    }

    @POST
    @Path("/new")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response add(@RestPath String number, MultivaluedMap<String, String> sent) {
        Unit unit = Unit.require(number);
        return forms.take(form(unit.number, "new"), Forms.values(sent), typed -> {
            Stay stay = logging.add(number, entry(typed, unit.depot.zoneId()), shell.username());
            return "Done: " + stay.kind.word() + " of " + unit.number + " noted";
        });
    }

    @GET
    @Path("/{id}")
    @Transactional
    public Response show(@RestPath String number, @RestPath String id) {
        Stay stay = Stay.require(Unit.require(number), Identifier.of("stay", id));
        ZoneId zone = stay.unit.depot.zoneId();
        Map<String, String> values = new HashMap<>();
        values.put("kind", stay.kind.word());
        values.put("from", local(stay.fromAt, zone));
        values.put("until", local(stay.untilAt, zone));
        values.put("place", stay.place == null ? null : stay.place.word());
        values.put("note", stay.note);
        return forms.show(form(stay.unit.number, id), values);
    }

    @POST
    @Path("/{id}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response change(@RestPath String number, @RestPath String id, MultivaluedMap<String, String> sent) {
        Unit unit = Unit.require(number);
        UUID stayId = Identifier.of("stay", id);
        return forms.take(form(unit.number, id), Forms.values(sent), typed -> {
            Stay stay = logging.change(number, stayId, entry(typed, unit.depot.zoneId()), shell.username());
            return "Done: " + stay.kind.word() + " of " + unit.number + " changed";
        });
    }

    private static StayEntry entry(Typed typed, ZoneId zone) {
        var entry = new StayEntry(
                typed.text("kind"),
                typed.time("from", zone),
                typed.time("until", zone),
                typed.text("place"),
                typed.text("note"));
        typed.refuseIfWrong();
        return entry;
    }

    private static Form form(String number, String id) {
        List<Choice> places = new ArrayList<>();
        places.add(new Choice("", "where it usually stands"));
        for (Storage place : Storage.values()) {
            places.add(new Choice(place.word(), place.word()));
        }
        return new Form(
                "Storage or workshop of " + number,
                null,
                UnitPaths.page(number),
                UnitPaths.page(number) + "/stays/" + id,
                "Keep",
                List.of(
                        Input.select(
                                "kind",
                                "Where",
                                Choice.of(List.of(LogKind.STORAGE.word(), LogKind.WORKSHOP.word())),
                                null),
                        Input.time("from", "From", "Local time of the unit's depot"),
                        Input.time("until", "Until", "Empty: until further notice; write it here to end the stay"),
                        Input.select("place", "Stored", places, "Under trees or outside a roof needs care sooner"),
                        Input.text("note", "Note", "May stay empty")));
    }

    private static String local(Instant instant, ZoneId zone) {
        return instant == null
                ? null
                : instant.atZone(zone)
                        .toLocalDateTime()
                        .truncatedTo(ChronoUnit.MINUTES)
                        .toString();
    }
}
