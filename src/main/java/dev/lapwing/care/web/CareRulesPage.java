package dev.lapwing.care.web;

import dev.lapwing.care.application.AdoptingRules;
import dev.lapwing.care.application.Rulebook;
import dev.lapwing.care.application.TryingRules;
import dev.lapwing.care.storage.RulesEdition;
import dev.lapwing.care.storage.TrialChange;
import dev.lapwing.care.storage.TrialRun;
import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Dates;
import dev.lapwing.web.Page;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
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
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.quartz.SchedulerException;

/** The care rules: which are in force, which were, and what others would change. Times are in UTC. */
@Path("/care-rules")
@RolesAllowed(Roles.COORDINATOR)
class CareRulesPage {
    private static final int TRIALS = 10;
    private static final int CHANGES = 50;

    record Rule(String name, String words, String source) {}

    record Edition(int number, String since, String by, String reason) {}

    record Trial(TrialRun run, String asked) {}

    record Change(String unit, String depot, String dueNow, String dueTried, int created, int calledOff, String why) {}

    /** What the form holds, and what is wrong with it. */
    record Draft(String text, List<FieldError> wrong) {}

    @CheckedTemplate(basePath = "care")
    static class Templates {
        static native TemplateInstance rules(
                Edition inForce, List<Rule> rules, List<Edition> editions, List<Trial> trials, Draft draft);

        static native TemplateInstance trial(
                TrialRun run, String asked, List<Change> changes, String next, boolean adoptable, String wrong);
    }

    @Inject
    Rulebook rulebook;

    @Inject
    TryingRules trying;

    @Inject
    AdoptingRules adopting;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    /** @param edition number of the edition whose text to start from, or null for the one in force */
    @GET
    @Transactional
    public Response show(@RestQuery Integer edition) {
        int number = edition == null ? rulebook.inForce().number() : edition;
        RulesEdition start = RulesEdition.<RulesEdition>findByIdOptional(number)
                .orElseThrow(() -> Refused.notFound("edition " + number + " of the care rules"));
        return show(200, new Draft(start.content, List.of()));
    }

    private Response show(int status, Draft draft) {
        Rulebook.Edition now = rulebook.inForce();
        List<Rule> rules = now.rules().all().stream()
                .map(rule -> new Rule(rule.ref().toString(), RuleWords.of(rule), rule.source()))
                .toList();
        List<Edition> editions = new ArrayList<>(
                RulesEdition.inOrder().stream().map(CareRulesPage::edition).toList());
        Collections.reverse(editions);
        List<Trial> trials = TrialRun.latest(TRIALS).stream()
                .map(run -> new Trial(run, Dates.time(run.askedAt, ZoneOffset.UTC)))
                .toList();
        return pages.show(status, Templates.rules(editions.get(0), rules, editions, trials, draft));
    }

    private static Edition edition(RulesEdition kept) {
        return new Edition(kept.number, Dates.time(kept.adoptedAt, ZoneOffset.UTC), kept.adoptedBy, kept.reason);
    }

    @POST
    @Path("trials")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Transactional
    public Response tryOut(@RestForm String text, @RestForm FileUpload file) throws IOException, SchedulerException {
        boolean uploaded = file != null && file.size() > 0;
        String rules = uploaded ? Files.readString(file.uploadedFile(), StandardCharsets.UTF_8) : text;
        try {
            trying.checked(rules);
            return pages.go("/care-rules/trials/" + trying.ask(rules, shell.username()).id);
        } catch (Refused refused) {
            return show(400, new Draft(rules == null ? "" : rules, refused.errors()));
        }
    }

    @GET
    @Path("trials/{id}")
    @Transactional
    public Response trial(@RestPath String id, @RestQuery String after) {
        return trial(200, Identifier.of("trial", id), after, null);
    }

    private Response trial(int status, UUID id, String after, String wrong) {
        TrialRun run = TrialRun.require(id);
        Page<TrialChange> page = Page.of(
                TrialChange.after(id, CareRulesResource.place(after), CHANGES + 1),
                CHANGES,
                TrialChange.countOf(id),
                change -> String.valueOf(change.position));
        List<Change> changes = page.items().stream().map(CareRulesPage::change).toList();
        String next = page.next() == null ? null : "/care-rules/trials/" + id + "?after=" + page.next();
        boolean adoptable = run.against == rulebook.inForce().number();
        return pages.show(
                status, Templates.trial(run, Dates.time(run.askedAt, ZoneOffset.UTC), changes, next, adoptable, wrong));
    }

    private static Change change(TrialChange change) {
        return new Change(
                change.unit,
                change.depot,
                Dates.day(change.dueNow),
                Dates.day(change.dueTried),
                change.created,
                change.calledOff,
                change.why);
    }

    @GET
    @Path("trials/{id}/changes.csv")
    @Produces("text/csv")
    @Transactional
    public Response file(@RestPath String id) {
        return TrialChanges.file(TrialRun.require(Identifier.of("trial", id)).id);
    }

    @POST
    @Path("trials/{id}/adoption")
    public Response adopt(@RestPath String id, @RestForm String reason) throws SchedulerException {
        UUID trial = Identifier.of("trial", id);
        try {
            var adopted = adopting.adopt(trial, reason, shell.username());
            return pages.go(
                    "/sweeps/" + adopted.sweep(),
                    "Done: edition " + adopted.edition() + " of the care rules is in force, and the fleet is swept");
        } catch (Refused refused) {
            return refused.kind() == Refused.Kind.INVALID
                    ? trial(400, trial, null, refused.errors().get(0).message())
                    : pages.goRefused("/care-rules/trials/" + trial, refused.getMessage());
        }
    }
}
