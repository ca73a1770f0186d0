package dev.lapwing.jobs.web;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.web.Shell;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;

/** Knows whether the person who looks at a page may work on its task. */
@ApplicationScoped
class SheetHands {
    @Inject
    Shell shell;

    boolean own(CareTask task) {
        return shell.coordinator() || shell.tech() && (task.assignee == null || task.assignee.equals(shell.username()));
    }

    /** Whether the forms of the sheet are there; what is entered before the work has begun is refused. */
    boolean mayFillIn(CareTask task) {
        return task.state.open() && own(task);
    }
}
