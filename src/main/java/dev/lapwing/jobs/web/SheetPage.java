package dev.lapwing.jobs.web;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.storage.RecordedFinding;
import dev.lapwing.platform.Identifier;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** The sheet that a tech works from and signs, in the order of the work. Works without scripts. */
@Path("/tasks/{id}/sheet")
@RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
class SheetPage {
    @Inject
    SheetAnswers answers;

    @Inject
    SheetStates states;

    @Inject
    Shell shell;

    /** Shows the sheet; with a finding to change, its form holds that finding. */
    @GET
    public Response show(@RestPath String id, @RestQuery String change) {
        UUID task = Identifier.of("task", id);
        return answers.page(200, task, form(task, change));
    }

    private SheetForm form(UUID task, String change) {
        var form = new SheetForm();
        form.by = shell.fullName();
        if (change != null) {
            UUID id = Identifier.of("finding", change);
            answers.inTransaction(() -> RecordedFinding.<RecordedFinding>findByIdOptional(id))
                    .filter(found -> found.taskId.equals(task))
                    .ifPresent(form::startFrom);
        }
        return form;
    }

    /** Answers how far the sheet is. */
    @GET
    @Path("state")
    @Produces(MediaType.APPLICATION_JSON)
    @Transactional
    public SheetState state(@RestPath String id) {
        return states.of(CareTask.require(Identifier.of("task", id)), shell);
    }
}
