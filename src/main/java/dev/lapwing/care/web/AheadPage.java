package dev.lapwing.care.web;

import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.domain.WeeksAhead;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Depot;
import dev.lapwing.fleet.Unit;
import dev.lapwing.use.storage.Rental;
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
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;

/** The next half year: planned work and days in the yard, by depot and week. */
@Path("/ahead")
@RolesAllowed(Roles.COORDINATOR)
class AheadPage {
    private static final int WEEKS = 26;

    /** What one depot has in one week. */
    record Cell(int tasks, long yardDays) {}

    /** One week of all depots shown. */
    record Row(String week, List<Cell> cells) {}

    @CheckedTemplate(basePath = "care")
    static class Templates {
        static native TemplateInstance ahead(List<Depot> depots, List<Row> rows);
    }

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @Inject
    Clock clock;

    @GET
    @Transactional
    public Response show() {
        Instant now = clock.instant();
        List<Depot> depots = Depot.byName().stream()
                .filter(depot -> shell.depot() == null || depot.code.equals(shell.depot()))
                .toList();
        List<List<WeeksAhead.Week>> columns =
                depots.stream().map(depot -> weeks(depot, now)).toList();
        List<Row> rows = new ArrayList<>();
        for (int week = 0; week < WEEKS && !columns.isEmpty(); week++) {
            int at = week;
            rows.add(new Row(
                    Dates.day(columns.get(0).get(at).monday()),
                    columns.stream()
                            .map(column -> column.get(at))
                            .map(one -> new Cell(one.tasks(), one.yardDays()))
                            .toList()));
        }
        return pages.show(Templates.ahead(depots, rows));
    }

    private static List<WeeksAhead.Week> weeks(Depot depot, Instant now) {
        LocalDate today = depot.dateAt(now);
        var ahead = new WeeksAhead(today, depot.zoneId(), WEEKS);
        List<CareTask> open = CareTask.list(
                "depot = ?1 and state in ?2", depot, EnumSet.range(TaskState.PLANNED, TaskState.UNDER_WAY));
        open.forEach(task -> ahead.addTask(task.due));
        Instant from = today.minusWeeks(1).atStartOfDay(depot.zoneId()).toInstant();
        Instant until = today.plusWeeks(WEEKS + 1).atStartOfDay(depot.zoneId()).toInstant();
        List<Rental> rentals = Rental.list(
                "unit.depot = ?1 and unit.outOfServiceOn is null and outAt < ?2 and (backAt is null or backAt > ?3)",
                depot,
                until,
                from);
        rentals.forEach(rental -> ahead.addOut(new WeeksAhead.Out(rental.outAt, rental.backAt)));
        return ahead.weeks(Unit.count("depot = ?1 and outOfServiceOn is null", depot));
    }
}
