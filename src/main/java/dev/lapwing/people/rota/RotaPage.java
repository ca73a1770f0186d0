package dev.lapwing.people.rota;

import dev.lapwing.people.Staff;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Dates;
import dev.lapwing.web.DepotChoices;
import dev.lapwing.web.FieldMessages;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** The duty rota of a depot: who is called, in what order, when a strike finds nobody. */
@Path("/rota")
@RolesAllowed(Roles.COORDINATOR)
class RotaPage {
    /** One day of the week with its turns. */
    record Weekday(String number, String name, List<RotaView.Turn> turns) {}

    @CheckedTemplate(basePath = "people")
    static class Templates {
        static native TemplateInstance rota(
                DepotChoices.Choice depot,
                RotaView.Answer rota,
                List<Weekday> week,
                List<String> gaps,
                List<Staff> people,
                RotaForm form,
                FieldMessages wrong);
    }

    @Inject
    KeepingRota keeping;

    @Inject
    RotaView view;

    @Inject
    DepotChoices depots;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    /** Shows the depot asked for, else the one chosen in the bar, else the first. */
    @GET
    public Response show(@RestQuery String depot) {
        String code = depot != null ? depot : shell.depot();
        DepotChoices.Choice shown = code == null
                ? depots.all().stream().findFirst().orElseThrow(() -> Refused.notFound("depot yet"))
                : keeping.requireDepot(code);
        return page(200, shown, new RotaForm(), FieldMessages.NONE);
    }

    @POST
    @Path("{depot}/turns")
    public Response addTurn(@RestPath String depot, @BeanParam RotaForm form) {
        return add(depot, form, "turn", () -> keeping.add(depot, form.turn()));
    }

    @POST
    @Path("{depot}/absences")
    public Response addAbsence(@RestPath String depot, @BeanParam RotaForm form) {
        return add(depot, form, "absence", () -> keeping.add(depot, form.absence()));
    }

    @POST
    @Path("{depot}/swaps")
    public Response addSwap(@RestPath String depot, @BeanParam RotaForm form) {
        return add(depot, form, "swap", () -> keeping.add(depot, form.swap(), shell.username()));
    }

    /** Takes a turn, an absence or a swap off; {@code what} is one of these words in the plural. */
    @POST
    @Path("{depot}/{what}/{id}/removal")
    public Response remove(@RestPath String depot, @RestPath String what, @RestPath String id) {
        keeping.requireDepot(depot);
        UUID key = Identifier.of("entry", id);
        switch (what) {
            case "turns" -> keeping.removeTurn(key);
            case "absences" -> keeping.removeAbsence(key);
            case "swaps" -> keeping.removeSwap(key);
            default -> throw Refused.notFound("list of " + what);
        }
        return pages.go("/rota?depot=" + depot, "Done: taken off the rota");
    }

    private Response add(String depot, RotaForm form, String what, Runnable act) {
        try {
            act.run();
            return pages.go("/rota?depot=" + depot, "Done: the " + what + " is on the rota");
        } catch (Refused refused) {
            if (refused.kind() != Refused.Kind.INVALID) {
                throw refused;
            }
            form.which = what;
            return page(400, keeping.requireDepot(depot), form, FieldMessages.of(refused));
        }
    }

    private Response page(int status, DepotChoices.Choice depot, RotaForm form, FieldMessages wrong) {
        RotaView.Answer rota = view.of(depot);
        List<Weekday> week = Arrays.stream(DayOfWeek.values())
                .map(weekday -> new Weekday(
                        Integer.toString(weekday.getValue()),
                        weekday.getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                        rota.turns().stream()
                                .filter(turn -> turn.weekday() == weekday.getValue())
                                .toList()))
                .toList();
        List<String> gaps = rota.gaps().stream()
                .map(gap -> Dates.time(gap.from().toInstant(), depot.zone()) + " to "
                        + Dates.time(gap.until().toInstant(), depot.zone()))
                .toList();
        return pages.show(status, Templates.rota(depot, rota, week, gaps, Staff.atDepot(depot.code()), form, wrong));
    }
}
