package dev.lapwing.care.web;

import dev.lapwing.care.application.SweepTimetable;
import dev.lapwing.care.storage.SweepRun;
import dev.lapwing.fleet.Depot;
import dev.lapwing.platform.Identifier;
import dev.lapwing.web.Dates;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.quartz.SchedulerException;

/** The last sweeps, and how far one is. Times are local to the depot swept, in UTC when it was all of them. */
@Path("/sweeps")
@RolesAllowed(Roles.COORDINATOR)
class SweepsPage {
    private static final int RUNS = 50;

    /** One sweep as people read it; a null depot means all. */
    record Row(
            UUID id,
            String started,
            String depot,
            String cause,
            String by,
            String state,
            int percent,
            int units,
            int unitsInAll,
            int created,
            int calledOff,
            int failed,
            String took,
            String error) {
        public boolean running() {
            return state.equals(SweepRun.State.RUNNING.word());
        }
    }

    @CheckedTemplate(basePath = "care")
    static class Templates {
        static native TemplateInstance sweeps(List<Row> rows, boolean running, List<Depot> depots);

        static native TemplateInstance sweep(Row row, Map<String, String> failures);
    }

    @Inject
    SweepTimetable timetable;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @GET
    @Transactional
    public Response list() {
        List<Row> rows = SweepRun.latest(RUNS).stream().map(SweepsPage::row).toList();
        return pages.show(Templates.sweeps(rows, rows.stream().anyMatch(Row::running), Depot.byName()));
    }

    @GET
    @Path("{id}")
    @Transactional
    public Response one(@RestPath String id) {
        SweepRun run = SweepRun.require(Identifier.of("sweep", id));
        return pages.show(Templates.sweep(row(run), run.failures));
    }

    @POST
    @Transactional
    public Response start(@RestForm String depot) throws SchedulerException {
        String code = depot == null || depot.isBlank() ? null : depot;
        if (code != null && Depot.findById(code) == null) {
            return pages.goRefused("/sweeps", "There is no depot " + code);
        }
        SweepRun run = timetable.ask(code, SweepRun.Cause.ASKED, shell.username());
        return pages.go("/sweeps/" + run.id);
    }

    private static Row row(SweepRun run) {
        Depot depot = run.depotCode == null ? null : Depot.findById(run.depotCode);
        ZoneId zone = depot == null ? ZoneOffset.UTC : depot.zoneId();
        return new Row(
                run.id,
                Dates.time(run.startedAt, zone) + (depot == null ? " UTC" : ""),
                depot == null ? null : depot.name,
                run.cause.word(),
                run.askedBy,
                run.state.word(),
                run.percent(),
                run.units,
                run.unitsInAll,
                run.created,
                run.calledOff,
                run.failures.size(),
                took(run),
                run.error);
    }

    private static String took(SweepRun run) {
        if (run.finishedAt == null) {
            return null;
        }
        Duration span = Duration.between(run.startedAt, run.finishedAt);
        return span.toMinutes() > 0
                ? span.toMinutes() + " min " + span.toSecondsPart() + " s"
                : span.toSeconds() + "." + span.toMillisPart() / 100 + " s";
    }
}
