package dev.lapwing.alerts;

import dev.lapwing.care.TaskAssigned;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.people.JobLinks;
import dev.lapwing.people.JobStanding;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.Optional;
import java.util.UUID;

/** Tells the links in letters how their jobs stand, and ends them when a job changes hands. */
@ApplicationScoped
class JobsForLinks implements JobStanding {
    /** Before the letter with the next link is written. */
    private static final int EARLY = 1000;

    @Inject
    JobLinks links;

    @Override
    @Transactional
    public Optional<Job> of(UUID id) {
        return CareTask.<CareTask>findByIdOptional(id)
                .map(task -> new Job(task.assignee, task.state.open(), task.state == TaskState.DONE));
    }

    @Transactional(Transactional.TxType.MANDATORY)
    void taskAssigned(@Observes @Priority(EARLY) TaskAssigned event) {
        links.revoke(event.taskId());
    }
}
