package dev.lapwing.care.web;

import dev.lapwing.care.TaskFacet;
import dev.lapwing.care.application.MovingTasks;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.platform.Identifier;
import dev.lapwing.web.Roles;
import io.quarkus.arc.All;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

@Path("/api/tasks/{id}")
class TaskResource {
    record Assignment(String tech) {}

    record CallOff(String why) {}

    @Inject
    MovingTasks moving;

    @Inject
    @All
    List<TaskFacet> facets;

    @Inject
    SecurityIdentity identity;

    @Inject
    Clock clock;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public TaskAnswer one(@RestPath String id) {
        return answer(CareTask.require(taskId(id)));
    }

    @POST
    @Path("/assignment")
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public TaskAnswer assign(@RestPath String id, Assignment assignment) {
        String tech = assignment == null ? null : assignment.tech();
        return answer(moving.assign(taskId(id), tech, by()));
    }

    @POST
    @Path("/acceptance")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Transactional
    public TaskAnswer accept(@RestPath String id) {
        return answer(moving.accept(taskId(id), by(), identity.hasRole(Roles.COORDINATOR)));
    }

    @POST
    @Path("/start")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    @Transactional
    public TaskAnswer start(@RestPath String id) {
        return answer(moving.start(taskId(id), by(), identity.hasRole(Roles.COORDINATOR)));
    }

    @POST
    @Path("/call-off")
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public TaskAnswer callOff(@RestPath String id, CallOff callOff) {
        return answer(moving.callOff(taskId(id), callOff == null ? null : callOff.why(), by()));
    }

    private TaskAnswer answer(CareTask task) {
        CareTask.flush();
        return TaskAnswer.of(task, clock.instant(), facets);
    }

    private String by() {
        return identity.getPrincipal().getName();
    }

    private static UUID taskId(String id) {
        return Identifier.of("task", id);
    }
}
