package dev.lapwing.jobs.web;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.RoofLists;
import dev.lapwing.jobs.application.UsingSealants;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;

/** Gathers what a sheet says of sealant. */
@ApplicationScoped
class SealantParts {
    @Inject
    UsingSealants sealants;

    @Inject
    RoofLists lists;

    @Inject
    SheetHands hands;

    @Inject
    Clock clock;

    /** Returns the part, or null when the task neither puts sealant on the roof nor treats its surface. */
    SealantPart of(CareTask task) {
        if (!sealants.concern(task)) {
            return null;
        }
        return new SealantPart(
                task.id,
                hands.mayFillIn(task),
                sealants.comesFirst(task),
                lists.sealants(task, clock.instant()),
                sealants.used(task).orElse(null));
    }
}
