package dev.lapwing.jobs.web;

import dev.lapwing.fleet.Unit;
import dev.lapwing.jobs.application.EditingRoofPlans;
import dev.lapwing.jobs.application.PlanEntry;
import dev.lapwing.jobs.application.RoofPlans;
import dev.lapwing.jobs.domain.roof.ObjectType;
import dev.lapwing.jobs.domain.roof.RoofDrawing;
import dev.lapwing.jobs.storage.PlanVersion;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Dates;
import dev.lapwing.web.FieldMessages;
import dev.lapwing.web.Pages;
import dev.lapwing.web.PersonNames;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;

/** The roof plan of a unit: everybody sees it, the coordinator changes it. Works without scripts. */
@Path("/units/{number}/roof-plan")
class RoofPlanPage {
    /** One object with what is wrong with it. */
    public record Row(RoofPlanForm.Typed typed, FieldMessages wrong, String at) {
        /** Returns what is wrong with a field, or null. */
        public String wrong(String field) {
            return wrong.at(at + field);
        }

        public boolean bad() {
            return wrong.all().keySet().stream().anyMatch(field -> field.startsWith(at));
        }
    }

    /** The page. */
    record View(
            String number,
            String kind,
            String length,
            int version,
            RoofDrawing drawing,
            List<Row> rows,
            List<String> types,
            String lineTypes,
            List<String> history) {}

    @CheckedTemplate(basePath = "jobs")
    static class Templates {
        static native TemplateInstance roofPlan(View view, RoofPlanForm form, FieldMessages wrong, String refusal);
    }

    @Inject
    RoofPlans plans;

    @Inject
    EditingRoofPlans editing;

    @Inject
    PersonNames names;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    public Response show(@RestPath String number) {
        return page(200, number, null, FieldMessages.NONE, null);
    }

    @POST
    @RolesAllowed(Roles.COORDINATOR)
    public Response act(@RestPath String number, @BeanParam RoofPlanForm form) {
        String act = form.act == null ? "save" : form.act;
        try {
            if (act.equals("add")) {
                form.addNew(lengthOf(number));
            } else if (act.startsWith("remove-")) {
                form.remove(act.substring("remove-".length()));
            } else if (act.equals("undo")) {
                return done(
                        number, editing.undo(number, form.version(), shell.username()), "is back to the one before");
            } else {
                return done(number, editing.save(number, read(number, form), shell.username()), "is saved");
            }
            return page(200, number, form, FieldMessages.NONE, null);
        } catch (Refused refused) {
            return switch (refused.kind()) {
                case INVALID -> page(400, number, form, FieldMessages.of(refused), null);
                case CONFLICT -> page(409, number, form, FieldMessages.NONE, refused.getMessage());
                default -> throw refused;
            };
        }
    }

    private double lengthOf(String number) {
        return QuarkusTransaction.requiringNew()
                .call(() -> Unit.require(number).lengthMetres.doubleValue());
    }

    /** Reads the form, or refuses it with everything that is wrong, readable or not. */
    private PlanEntry read(String number, RoofPlanForm form) {
        var errors = new FieldErrors();
        PlanEntry entry = form.entry(lengthOf(number), errors);
        if (!errors.list().isEmpty()) {
            try {
                editing.examine(number, entry);
            } catch (Refused alsoWrong) {
                alsoWrong.errors().forEach(error -> errors.check(false, error.field(), error.message()));
            }
        }
        errors.refuseIfAny();
        return entry;
    }

    private Response done(String number, RoofPlans.Current saved, String what) {
        String part = URLEncoder.encode(number, StandardCharsets.UTF_8).replace("+", "%20");
        return pages.go("/units/" + part + "/roof-plan", "The plan " + what + ", as version " + saved.version());
    }

    /** Shows the page with a form, or with null the plan that counts. */
    private Response page(int status, String number, RoofPlanForm typed, FieldMessages wrong, String refusal) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Unit unit = Unit.require(number);
            RoofPlans.Current current = plans.current(unit);
            RoofPlanForm form = typed == null ? RoofPlanForm.of(current) : typed;
            return pages.show(status, Templates.roofPlan(view(unit, current, form, wrong), form, wrong, refusal));
        });
    }

    private View view(Unit unit, RoofPlans.Current current, RoofPlanForm form, FieldMessages wrong) {
        List<Row> rows = new ArrayList<>();
        form.rows().forEach(row -> rows.add(new Row(row, wrong, "objects[" + rows.size() + "].")));
        return new View(
                unit.number,
                unit.kind.word(),
                RoofPlanForm.metres(unit.lengthMetres.doubleValue()),
                current.version(),
                RoofDrawing.of(current.plan(), List.of()),
                rows,
                types(false),
                String.join(" ", types(true)),
                PlanVersion.all(unit.id).stream()
                        .map(version -> "Version " + version.version + ", "
                                + Dates.time(version.savedAt, unit.depot.zoneId()) + ", " + names.of(version.savedBy)
                                + ": " + version.objects.size() + " things on the roof")
                        .toList());
    }

    private static List<String> types(boolean linesOnly) {
        return Arrays.stream(ObjectType.values())
                .filter(type -> type != ObjectType.EDGE && (!linesOnly || type.line()))
                .map(ObjectType::word)
                .toList();
    }
}
