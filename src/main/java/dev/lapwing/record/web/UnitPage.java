package dev.lapwing.record.web;

import dev.lapwing.care.domain.HoldCause;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.fleet.ServiceState;
import dev.lapwing.fleet.Unit;
import dev.lapwing.record.UnitHistory;
import dev.lapwing.returns.MarkedNote;
import dev.lapwing.use.application.ReadingUse;
import dev.lapwing.web.Dates;
import dev.lapwing.web.Pages;
import dev.lapwing.web.PersonNames;
import dev.lapwing.web.Roles;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** One unit: may it go out, what is next, what is known of its roof, and what happened to it. */
@Path("/units/{number}")
@RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
class UnitPage {
    private static final int MOST_OF_EACH = 50;

    /** An open hold, and the open question that caused it or null. */
    record HeldBy(String cause, String words, String since, UUID question) {}

    /** Open work. */
    record Work(
            UUID id, String kind, String standing, String due, String state, String who, String why, String question) {}

    /** What happened, as the page shows it. */
    record Happened(
            String when,
            String kind,
            String title,
            String words,
            String who,
            List<MarkedNote.Piece> pieces,
            UUID task,
            List<String> steps) {}

    /** The page. */
    record View(
            String number,
            String kind,
            String depot,
            String service,
            List<HeldBy> holds,
            List<Work> work,
            List<UnitFacts.Fact> facts,
            UnitUseView use,
            List<Happened> history) {}

    @CheckedTemplate(basePath = "record")
    static class Templates {
        static native TemplateInstance unit(View view);
    }

    @Inject
    UnitHistory history;

    @Inject
    ReadingUse reading;

    @Inject
    PersonNames names;

    @Inject
    Pages pages;

    @Inject
    Clock clock;

    @GET
    @Transactional
    public Response show(@RestPath String number) {
        Unit unit = Unit.require(number);
        ZoneId zone = unit.depot.zoneId();
        Instant now = clock.instant();
        ServiceState service = unit.serviceState(unit.depot.dateAt(now));
        return pages.show(Templates.unit(new View(
                unit.number,
                unit.kind.word(),
                unit.depot.name,
                service == ServiceState.IN_SERVICE ? null : service.word(),
                Hold.openOf(List.of(unit.id)).stream()
                        .map(hold -> new HeldBy(
                                hold.cause.word(),
                                hold.words,
                                Dates.time(hold.openedAt, zone),
                                hold.cause == HoldCause.QUESTION ? hold.causeId : null))
                        .toList(),
                work(unit),
                UnitFacts.of(
                        unit, reading.of(List.of(unit.id), now).get(unit.id).inForce()),
                UnitUseView.of(unit, now, names),
                history.of(unit, MOST_OF_EACH).stream()
                        .map(event -> happened(event, zone))
                        .toList())));
    }

    private List<Work> work(Unit unit) {
        List<CareTask> open = CareTask.list("unit.id = ?1 and state in ?2 order by dueAt", unit.id, TaskState.OPEN);
        return open.stream()
                .map(task -> new Work(
                        task.id,
                        task.kind.label(),
                        task.standingAt(clock.instant()).word(),
                        task.kind == TaskKind.STRIKE_INSPECTION ? "at once" : Dates.day(task.due),
                        task.state.word(),
                        names.of(task.assignee),
                        task.why,
                        task.question))
                .toList();
    }

    private static Happened happened(UnitHistory.Event event, ZoneId zone) {
        return new Happened(
                Dates.time(event.at(), zone),
                event.kind(),
                event.title(),
                event.words(),
                event.who(),
                event.pieces(),
                event.task(),
                event.steps().stream()
                        .map(step -> Dates.time(step.at(), zone) + ", " + step.who() + ": " + step.words())
                        .toList());
    }
}
