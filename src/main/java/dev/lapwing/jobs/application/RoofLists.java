package dev.lapwing.jobs.application;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.domain.sealant.Sealant;
import dev.lapwing.jobs.domain.sealant.SealantAnswer;
import dev.lapwing.jobs.domain.surface.Cleaner;
import dev.lapwing.jobs.domain.surface.CleanerAnswer;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;

/** Says of each cleaner and sealant of a depot whether it may touch the roof of a task. */
@ApplicationScoped
public class RoofLists {
    @Inject
    SheetReference reference;

    @Inject
    DepotLists lists;

    @Inject
    SealantSituations situations;

    /** A cleaner or sealant, and whether it may touch the roof now. */
    public record Item(String name, boolean allowed, String because) {}

    public List<Item> cleaners(CareTask task) {
        String surface = task.unit.roof.surface.word();
        return lists.cleaners(task.depot.code).stream()
                .map(cleaner -> item(cleaner, surface))
                .toList();
    }

    private Item item(Cleaner cleaner, String surface) {
        CleanerAnswer answer = reference.cleanerRules().mayTouch(surface, cleaner, null);
        return answer instanceof CleanerAnswer.Allowed allowed
                ? new Item(cleaner.name(), true, allowed.because())
                : new Item(cleaner.name(), false, String.join("; ", ((CleanerAnswer.Refused) answer).reasons()));
    }

    public List<Item> sealants(CareTask task, Instant now) {
        var situation = situations.of(task.unit, now);
        return lists.sealants(task.depot.code).stream()
                .map(sealant -> item(sealant, situation.mayUse(sealant)))
                .toList();
    }

    private static Item item(Sealant sealant, SealantAnswer answer) {
        return new Item(sealant.name(), answer instanceof SealantAnswer.Allowed, answer.because());
    }
}
