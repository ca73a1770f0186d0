package dev.lapwing.care.web;

import dev.lapwing.care.domain.Standing;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.DueBoard;
import dev.lapwing.care.storage.DueList;
import dev.lapwing.fleet.Depot;
import dev.lapwing.platform.Refused;
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
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestQuery;

/** The sheet of a yard for today: who does what in what order. Printed and pinned up in the morning. */
@Path("/day")
@RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
class DayPage {
    /** More would not fit one sheet, nor one day. */
    private static final int MOST_OF_EACH = 150;

    private static final String NOBODY = "Nobody yet";

    @CheckedTemplate(basePath = "care")
    static class Templates {
        static native TemplateInstance day(String depot, String date, Map<String, List<DueRow>> byTech, boolean more);
    }

    @Inject
    DueRows rows;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @Inject
    Clock clock;

    @GET
    @Transactional
    public Response show(@RestQuery String depot) {
        Depot yard = yard(depot == null || depot.isBlank() ? shell.depot() : depot);
        Instant now = clock.instant();
        var board = new DueBoard(now);
        var filter = new DueList.Filter(yard.code, null, null, null, null, null);
        List<CareTask> today = new ArrayList<>();
        boolean more = false;
        for (Standing standing : List.of(Standing.STRIKE, Standing.LATE, Standing.DUE)) {
            List<CareTask> found = board.after(standing, filter, DueList.Place.START, MOST_OF_EACH);
            today.addAll(found);
            more |= found.size() == MOST_OF_EACH;
        }
        Map<String, List<DueRow>> byTech = new LinkedHashMap<>();
        for (DueRow row : rows.of(today, now)) {
            String name = row.assigneeName() == null ? NOBODY : row.assigneeName();
            byTech.computeIfAbsent(name, first -> new ArrayList<>()).add(row);
        }
        return pages.show(Templates.day(yard.name, Dates.day(yard.dateAt(now)), byTech, more));
    }

    /** Returns the depot asked for, or the first by name when none is. */
    private static Depot yard(String code) {
        List<Depot> all = Depot.byName();
        return all.stream()
                .filter(depot -> code == null || depot.code.equals(code))
                .findFirst()
                .orElseThrow(() -> Refused.notFound(code == null ? "depot yet" : "depot " + code));
    }
}
