package dev.lapwing.care.web;

import com.fasterxml.jackson.annotation.JsonRawValue;
import dev.lapwing.care.application.AdoptingRules;
import dev.lapwing.care.application.Rulebook;
import dev.lapwing.care.application.TryingRules;
import dev.lapwing.care.storage.RulesEdition;
import dev.lapwing.care.storage.SweepRun;
import dev.lapwing.care.storage.TrialChange;
import dev.lapwing.care.storage.TrialRun;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Idempotent;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.quartz.SchedulerException;

/** The care rules in force, trials of others, and taking those into force. */
@Path("/api/care-rules")
@RolesAllowed(Roles.COORDINATOR)
class CareRulesResource {
    record EditionAnswer(int edition, OffsetDateTime adoptedAt, String adoptedBy, String reason) {
        static EditionAnswer of(RulesEdition edition) {
            return new EditionAnswer(
                    edition.number, edition.adoptedAt.atOffset(ZoneOffset.UTC), edition.adoptedBy, edition.reason);
        }
    }

    record RulesAnswer(EditionAnswer inForce, @JsonRawValue String rules, List<EditionAnswer> history) {}

    record Taken(UUID id) {}

    record Adoption(UUID trial, String reason) {}

    record ChangeAnswer(
            String unit, String depot, LocalDate dueNow, LocalDate dueTried, int created, int calledOff, String why) {
        static ChangeAnswer of(TrialChange change) {
            return new ChangeAnswer(
                    change.unit,
                    change.depot,
                    change.dueNow,
                    change.dueTried,
                    change.created,
                    change.calledOff,
                    change.why);
        }
    }

    record TrialAnswer(
            UUID id,
            SweepRun.State state,
            int against,
            int unitsInAll,
            int units,
            int different,
            int earlier,
            int later,
            int created,
            int calledOff,
            int failed,
            String error,
            Page<ChangeAnswer> changes) {}

    @Inject
    Rulebook rulebook;

    @Inject
    TryingRules trying;

    @Inject
    AdoptingRules adopting;

    @Inject
    SecurityIdentity identity;

    @GET
    @Transactional
    public RulesAnswer inForce() {
        RulesEdition latest = RulesEdition.require(rulebook.inForce().number());
        return new RulesAnswer(
                EditionAnswer.of(latest),
                latest.content,
                RulesEdition.inOrder().stream().map(EditionAnswer::of).toList());
    }

    @POST
    @Path("/trials")
    @Consumes(MediaType.APPLICATION_JSON)
    @Idempotent
    public Response tryOut(String rules) throws SchedulerException {
        UUID id = trying.ask(rules, identity.getPrincipal().getName()).id;
        return Response.accepted(new Taken(id)).build();
    }

    @GET
    @Path("/trials/{id}")
    @Transactional
    public TrialAnswer trial(@RestPath String id, @RestQuery Integer limit, @RestQuery String after) {
        TrialRun run = TrialRun.require(Identifier.of("trial", id));
        int most = Page.limit(limit);
        Page<ChangeAnswer> changes = Page.of(
                        TrialChange.after(run.id, place(after), most + 1),
                        most,
                        TrialChange.countOf(run.id),
                        change -> String.valueOf(change.position))
                .map(ChangeAnswer::of);
        return new TrialAnswer(
                run.id,
                run.state,
                run.against,
                run.unitsInAll,
                run.units,
                run.different,
                run.earlier,
                run.later,
                run.created,
                run.calledOff,
                run.failed,
                run.error,
                changes);
    }

    /** Reads a place in a trial's list as it was sent; null is before the first. */
    static int place(String after) {
        if (after == null || after.isBlank()) {
            return 0;
        }
        try {
            return Integer.parseInt(after);
        } catch (NumberFormatException notOurs) {
            throw Refused.invalid("after", "is not a place in this list");
        }
    }

    @GET
    @Path("/trials/{id}/changes.csv")
    @Produces("text/csv")
    @Transactional
    public Response file(@RestPath String id) {
        return TrialChanges.file(TrialRun.require(Identifier.of("trial", id)).id);
    }

    @POST
    @Path("/adoptions")
    @Idempotent
    public Response adopt(Adoption adoption) throws SchedulerException {
        if (adoption == null || adoption.trial() == null) {
            throw Refused.invalid("trial", "is required: rules are tried before they are adopted");
        }
        var adopted = adopting.adopt(
                adoption.trial(), adoption.reason(), identity.getPrincipal().getName());
        return Response.status(Response.Status.CREATED).entity(adopted).build();
    }
}
