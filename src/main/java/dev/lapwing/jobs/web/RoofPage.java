package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.jobs.application.ReadyingRoofs;
import dev.lapwing.jobs.application.UsingSealants;
import dev.lapwing.jobs.storage.RecordedEvent;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;

/** The forms of a sheet for wash, drying and sealant. */
@Path("/tasks/{id}/roof")
@RolesAllowed({Roles.COORDINATOR, Roles.TECH})
class RoofPage {
    /** How far a phone's clock may be ahead. */
    private static final Duration AHEAD = Duration.ofMinutes(10);

    @Inject
    ReadyingRoofs roofs;

    @Inject
    UsingSealants sealants;

    @Inject
    StepPages steps;

    @Inject
    SecurityIdentity identity;

    @Inject
    Shell shell;

    @Inject
    Clock clock;

    @POST
    @Path("wash")
    public Response washed(
            @RestPath String id, @RestForm String cleaner, @RestForm String makerStatement, @RestForm String washedAt) {
        UUID task = taskId(id);
        var sent = new StepPages.Sent(id + "/wash", cleaner, makerStatement, washedAt);
        return steps.onSheet(
                task,
                "#wash",
                sent,
                () -> said(roofs.washed(task, cleaner, makerStatement, moment(washedAt), signer())));
    }

    @POST
    @Path("too-dirty")
    public Response tooDirty(@RestPath String id) {
        UUID task = taskId(id);
        var sent = new StepPages.Sent(id + "/too-dirty");
        return steps.onSheet(task, "#wash", sent, () -> said(roofs.tooDirty(task, null, signer())));
    }

    @POST
    @Path("inspection")
    public Response begin(@RestPath String id, @RestForm String wet, @RestForm String windy, @RestForm String reason) {
        UUID task = taskId(id);
        var sent = new StepPages.Sent(id + "/inspection", wet, windy, reason);
        var beginning = new ReadyingRoofs.Beginning("yes".equals(wet), "yes".equals(windy), false, reason);
        return steps.onSheet(task, "#dry", sent, () -> said(roofs.begin(task, beginning, signer())));
    }

    @POST
    @Path("sealants")
    public Response sealant(@RestPath String id, @RestForm String sealant) {
        UUID task = taskId(id);
        var sent = new StepPages.Sent(id + "/sealants", sealant);
        return steps.onSheet(task, "#sealant", sent, () -> said(sealants.use(task, sealant, signer())));
    }

    @POST
    @Path("treatments")
    public Response treated(@RestPath String id, @RestForm String held, @RestForm String words) {
        UUID task = taskId(id);
        var sent = new StepPages.Sent(id + "/treatments", held, words);
        return steps.onSheet(
                task, "#sealant", sent, () -> said(sealants.treated(task, "yes".equals(held), words, signer())));
    }

    /** Reads when a wash ended, as the phone noted it; its clock may run ahead of this one by a little. */
    private Instant moment(String typed) {
        if (typed == null || typed.isBlank()) {
            return null;
        }
        try {
            Instant noted = Instant.parse(typed.strip());
            Instant now = clock.instant();
            return noted.isAfter(now) && noted.isBefore(now.plus(AHEAD)) ? now : noted;
        } catch (DateTimeParseException wrong) {
            throw Refused.invalid("washedAt", "is not a moment");
        }
    }

    private static String said(RecordedEvent noted) {
        return "Noted. " + noted.event().inWords();
    }

    private Signer signer() {
        return new Signer(identity.getPrincipal().getName(), identity.getRoles(), shell.byLink());
    }

    private static UUID taskId(String id) {
        return Identifier.of("task", id);
    }
}
