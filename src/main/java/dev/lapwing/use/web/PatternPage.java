package dev.lapwing.use.web;

import dev.lapwing.fleet.Unit;
import dev.lapwing.use.application.ChoosingPatterns;
import dev.lapwing.use.domain.UsePattern;
import dev.lapwing.use.storage.SetPattern;
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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jboss.resteasy.reactive.RestPath;

/** The form on which the coordinator says how a unit is used, for as long as the log would say it wrong. */
@Path("/units/{number}/pattern")
@RolesAllowed(Roles.COORDINATOR)
class PatternPage {
    private static final String PATTERN = "usePattern.pattern";
    private static final String REASON = "usePattern.reason";
    private static final String UNTIL = "usePattern.until";
    private static final String BY_THE_LOG = "log";

    @Inject
    ChoosingPatterns choosing;

    @Inject
    Forms forms;

    @Inject
    Shell shell;

    @GET
    @Transactional
    public Response show(@RestPath String number) {
        Unit unit = Unit.require(number);
        SetPattern set = SetPattern.findById(unit.id);
        Map<String, String> values = new HashMap<>();
        if (set != null) {
            values.put(PATTERN, set.pattern.word());
            values.put(REASON, set.reason);
            values.put(UNTIL, Objects.toString(set.setUntil, null));
        }
        return forms.show(form(unit.number), values);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response set(@RestPath String number, MultivaluedMap<String, String> sent) {
        return forms.take(form(number), Forms.values(sent), typed -> {
            keep(number, typed);
            return "Done: the pattern of " + number + " is kept";
        });
    }

    private void keep(String number, Typed typed) {
        var until = typed.date(UNTIL);
        typed.refuseIfWrong();
        if (BY_THE_LOG.equals(typed.text(PATTERN))) {
            choosing.end(number, typed.text(REASON), shell.username());
        } else {
            choosing.set(number, typed.text(PATTERN), typed.text(REASON), until, shell.username());
        }
    }

    private static Form form(String number) {
        return new Form(
                "How " + number + " is used",
                null,
                UnitPaths.page(number),
                UnitPaths.page(number) + "/pattern",
                "Keep",
                List.of(
                        Input.select(
                                PATTERN,
                                "Pattern",
                                List.of(
                                        new Choice(UsePattern.FULL_TIME.word(), "full-time: cared for all year"),
                                        new Choice(UsePattern.SEASONAL.word(), "seasonal: at opening and closing"),
                                        new Choice(BY_THE_LOG, "what the log says")),
                                null),
                        Input.text(REASON, "Reason", null),
                        Input.date(UNTIL, "Last day it counts", "Then the log says it again. Empty: without end")));
    }
}
