package dev.lapwing.care.web;

import dev.lapwing.care.application.MovingTasks;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.OwnPath;
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
import java.util.UUID;
import java.util.function.Supplier;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;

/** One task: what to do, with what care, and the buttons that move it on. */
@Path("/tasks/{id}")
class TaskPage {
    @CheckedTemplate(basePath = "care")
    static class Templates {
        static native TemplateInstance task(TaskView view);
    }

    @Inject
    MovingTasks moving;

    @Inject
    TaskViews views;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Response show(@RestPath String id) {
        CareTask task = CareTask.require(Identifier.of("task", id));
        return pages.show(Templates.task(views.of(task, shell)));
    }

    @POST
    @Path("assignment")
    @RolesAllowed(Roles.COORDINATOR)
    public Response assign(@RestPath String id, @RestForm String tech, @RestForm String back) {
        return move(id, back, "given to its tech", () -> moving.assign(taskId(id), tech, shell.username()));
    }

    @POST
    @Path("acceptance")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    public Response accept(@RestPath String id, @RestForm String back) {
        return move(id, back, "accepted", () -> moving.accept(taskId(id), shell.username(), shell.coordinator()));
    }

    @POST
    @Path("start")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    public Response start(@RestPath String id, @RestForm String back) {
        return move(id, back, "started", () -> moving.start(taskId(id), shell.username(), shell.coordinator()));
    }

    @POST
    @Path("call-off")
    @RolesAllowed(Roles.COORDINATOR)
    public Response callOff(@RestPath String id, @RestForm String why, @RestForm String back) {
        return move(id, back, "called off", () -> moving.callOff(taskId(id), why, shell.username()));
    }

    private Response move(String id, String back, String done, Supplier<CareTask> act) {
        String there = OwnPath.of(back, "/tasks/" + taskId(id));
        try {
            CareTask task = act.get();
            return pages.go(there, "Done: " + task.kind.label() + " of " + task.unit.number + " " + done);
        } catch (Refused refused) {
            return pages.goRefused(there, MoveWords.of(refused));
        }
    }

    private static UUID taskId(String id) {
        return Identifier.of("task", id);
    }
}
