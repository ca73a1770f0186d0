package dev.lapwing.jobs.application;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.PastJobs;
import dev.lapwing.jobs.domain.material.TimeEstimate;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;

/** Estimates from the house's own past jobs how long work takes. */
@ApplicationScoped
public class TimeNeeds {
    private static final int LATEST = 200;

    @Inject
    SheetSettings settings;

    /** Returns the estimate for work of a kind, from the latest jobs of all depots. */
    public TimeEstimate of(TaskKind kind) {
        return TimeEstimate.of(PastJobs.durationsOf(kind, LATEST), settings.usualTime(kind));
    }
}
