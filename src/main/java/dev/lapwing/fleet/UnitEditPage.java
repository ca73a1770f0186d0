package dev.lapwing.fleet;

import dev.lapwing.web.Form;
import dev.lapwing.web.Form.Input;
import dev.lapwing.web.Forms;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;

/** The forms on which what is known of a unit is changed, and on which it gets a new roof. */
@Path("/units/{number}")
@RolesAllowed(Roles.COORDINATOR)
class UnitEditPage {
    @Inject
    RegisteringUnits registering;

    @Inject
    ChangingService changing;

    @Inject
    Forms forms;

    @Inject
    Shell shell;

    @GET
    @Path("/edit")
    @Transactional
    public Response edit(@RestPath String number) {
        Unit unit = Unit.require(number);
        return forms.show(editForm(unit.number), UnitForms.values(unit));
    }

    @POST
    @Path("/edit")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response change(@RestPath String number, MultivaluedMap<String, String> sent) {
        return forms.take(editForm(number), Forms.values(sent), typed -> {
            UnitRequest request = UnitForms.unit(typed, number);
            typed.refuseIfWrong();
            registering.change(number, request, shell.username());
            return "Done: what is known of " + number + " was changed";
        });
    }

    private static Form editForm(String number) {
        List<Input> inputs = new ArrayList<>(UnitForms.ofUnit(Depot.byName()));
        inputs.addAll(UnitForms.ofRoof());
        inputs.add(Input.date("roof.installedOn", "Roof laid on", "For a new roof use the form for it"));
        return new Form(
                "What is known of " + number,
                "each change is kept with who made it",
                UnitPaths.page(number),
                UnitPaths.page(number) + "/edit",
                "Keep",
                inputs);
    }

    @GET
    @Path("/roof")
    @Transactional
    public Response roof(@RestPath String number) {
        Unit unit = Unit.require(number);
        return forms.show(
                roofForm(unit.number),
                Map.of("roof.surface", unit.roof.surface.word(), "roof.footing", Footing.UNKNOWN.word()));
    }

    @POST
    @Path("/roof")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response replaceRoof(@RestPath String number, MultivaluedMap<String, String> sent) {
        return forms.take(roofForm(number), Forms.values(sent), typed -> {
            var replaced = new RoofReplaced(typed.date("on"), UnitForms.roof(typed), typed.text("reason"));
            typed.refuseIfWrong();
            changing.replaceRoof(number, replaced, shell.username());
            return "Done: the new roof of " + number + " is noted";
        });
    }

    private static Form roofForm(String number) {
        List<Input> inputs = new ArrayList<>();
        inputs.add(Input.date("on", "Laid on", null));
        inputs.addAll(UnitForms.ofRoof());
        inputs.add(Input.text("reason", "Reason", "Such as: worn, hail, leak"));
        return new Form(
                "New roof of " + number,
                "its care starts anew; open work on the old roof is called off",
                UnitPaths.page(number),
                UnitPaths.page(number) + "/roof",
                "Keep",
                inputs);
    }
}
