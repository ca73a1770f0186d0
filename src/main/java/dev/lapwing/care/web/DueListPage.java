package dev.lapwing.care.web;

import dev.lapwing.care.domain.Standing;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.web.DepotChoices;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;

/** The coordinator's page: strikes and holds first, then what is late, due and coming. */
@Path("/due-list")
@RolesAllowed(Roles.COORDINATOR)
class DueListPage {
    @CheckedTemplate(basePath = "care")
    static class Templates {
        static native TemplateInstance dueList(
                DueListView view, List<DepotChoices.Choice> depots, List<TaskKind> kinds);
    }

    @Inject
    DueListViews views;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @GET
    @Transactional
    public Response show(@BeanParam DueQuery query) {
        query.depotUnlessGiven(shell.depot());
        var errors = new FieldErrors();
        var filter = query.filter(errors);
        Standing only = query.standing(errors);
        var place = query.place(errors);
        errors.refuseIfAny();
        DueListView view = views.of(query, filter, only, place, shell.here());
        return pages.show(Templates.dueList(view, shell.depots(), List.of(TaskKind.values())));
    }
}
