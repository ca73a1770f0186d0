package dev.lapwing.care.web;

import dev.lapwing.care.application.MovingTasks;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.OwnPath;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import org.jboss.resteasy.reactive.RestForm;

/** Does one thing to many tasks. Each goes by itself: one that is refused does not keep back the others. */
@Path("/due-list/many")
@RolesAllowed(Roles.COORDINATOR)
class ManyTasksPage {
    private static final int MOST = 500;

    @Inject
    MovingTasks moving;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @POST
    public Response move(
            @RestForm List<String> task,
            @RestForm String act,
            @RestForm String tech,
            @RestForm String why,
            @RestForm String back) {
        String there = OwnPath.of(back, "/due-list");
        if (task == null || task.isEmpty() || task.size() > MOST) {
            return pages.goRefused(there, "Nothing was done: choose from 1 to " + MOST + " rows first");
        }
        String by = shell.username();
        return "call-off".equals(act)
                ? each(task, there, "called off", id -> moving.callOff(id, why, by))
                : each(task, there, "given to " + tech, id -> moving.assign(id, tech, by));
    }

    private Response each(List<String> tasks, String there, String done, Consumer<UUID> act) {
        int moved = 0;
        List<String> refusals = new ArrayList<>();
        for (String task : tasks) {
            try {
                act.accept(Identifier.of("task", task));
                moved++;
            } catch (Refused refused) {
                refusals.add(MoveWords.of(refused));
            }
        }
        if (refusals.isEmpty()) {
            return pages.go(there, "Done: " + moved + (moved == 1 ? " task " : " tasks ") + done);
        }
        String reasons = String.join("; ", refusals.stream().distinct().toList());
        return pages.goRefused(
                there, moved + " of " + tasks.size() + " tasks " + done + ". Not the others: " + reasons);
    }
}
