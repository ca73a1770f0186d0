package dev.lapwing.fleet;

import dev.lapwing.web.Form;
import dev.lapwing.web.Form.Choice;
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
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;

/** The form on which a unit is taken out of service, sold, or brought back. */
@Path("/units/{number}/service")
@RolesAllowed(Roles.COORDINATOR)
class ServicePage {
    @Inject
    ChangingService changing;

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
        ServiceState next = unit.outOfServiceOn == null ? ServiceState.OUT_OF_SERVICE : ServiceState.IN_SERVICE;
        String today = unit.depot.dateAt(clock.instant()).toString();
        return forms.show(form(unit.number), Map.of("state", next.word(), "on", today));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response change(@RestPath String number, MultivaluedMap<String, String> sent) {
        return forms.take(form(number), Forms.values(sent), typed -> {
            var request = new ServiceRequest(typed.text("state"), typed.date("on"), typed.text("reason"));
            typed.refuseIfWrong();
            changing.change(number, request, shell.username());
            return "Done: " + number + " is noted as " + request.state();
        });
    }

    private static Form form(String number) {
        return new Form(
                "Service of " + number,
                "routine work is called off while it is out, and planned again when it is back",
                UnitPaths.page(number),
                UnitPaths.page(number) + "/service",
                "Keep",
                List.of(
                        Input.select(
                                "state",
                                "It is",
                                List.of(
                                        new Choice(ServiceState.OUT_OF_SERVICE.word(), "out of service for a time"),
                                        new Choice(ServiceState.SOLD.word(), "sold"),
                                        new Choice(ServiceState.IN_SERVICE.word(), "back in service")),
                                null),
                        Input.date("on", "From", "Empty: today"),
                        Input.text("reason", "Reason", null)));
    }
}
