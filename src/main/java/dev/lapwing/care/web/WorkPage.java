package dev.lapwing.care.web;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.DueList;
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
import java.util.List;

/** The tech's page: their own work, the most pressing first. */
@Path("/work")
@RolesAllowed(Roles.TECH)
class WorkPage {
    private static final int MOST = 60;

    @CheckedTemplate(basePath = "care")
    static class Templates {
        static native TemplateInstance work(List<DueRow> mine, List<DueRow> free, String here);
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
    public Response show() {
        Instant now = clock.instant();
        var mine = new DueList.Filter(null, null, null, null, shell.username(), null);
        List<CareTask> tasks = DueList.after(mine, DueList.Place.START, MOST);
        var free = new DueList.Filter(shell.depot(), null, null, null, DueList.Filter.NOBODY, null);
        List<CareTask> unassigned = shell.depot() == null ? List.of() : DueList.after(free, DueList.Place.START, 12);
        return pages.show(Templates.work(rows.of(tasks, now), rows.of(unassigned, now), shell.here()));
    }
}
