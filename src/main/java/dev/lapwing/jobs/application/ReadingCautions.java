package dev.lapwing.jobs.application;

import dev.lapwing.care.Signer;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.domain.sheet.Footing;
import dev.lapwing.jobs.domain.sheet.Text;
import dev.lapwing.jobs.storage.CautionReading;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** Has the cautions read before the rest of a sheet is opened. */
@ApplicationScoped
public class ReadingCautions {
    @Inject
    SheetReference reference;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Returns the cautions that must be read before work on the roof of a task. */
    public List<Text> of(CareTask task) {
        return reference.cautions().before(Footing.of(task.unit.roof.footing.word()));
    }

    /** Returns whether a person has read them; what a roof is newly known for must be read anew. */
    public boolean readBy(CareTask task, String username) {
        return CautionReading.covers(task.id, username, idsOf(task));
    }

    /** Notes that a person has read the cautions; refused unless each of them was acknowledged. */
    @Transactional
    public void read(UUID taskId, Collection<String> acknowledged, Signer by) {
        CareTask task = CareTask.require(taskId);
        List<String> wanted = idsOf(task);
        if (!acknowledged.containsAll(wanted)) {
            throw Refused.invalid("read", "must be acknowledged one by one: each of them");
        }
        var reading = new CautionReading();
        reading.id = ids.next();
        reading.taskId = task.id;
        reading.username = by.username();
        reading.cautions = String.join(" ", wanted);
        reading.readAt = clock.instant();
        reading.byLink = by.byLink();
        reading.persist();
    }

    private List<String> idsOf(CareTask task) {
        return of(task).stream().map(Text::id).toList();
    }
}
