package dev.lapwing.jobs.application;

import dev.lapwing.care.WorkWaits;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.jobs.domain.sealant.SealantAnswer;
import dev.lapwing.jobs.domain.verdict.Work;
import dev.lapwing.jobs.storage.OpenChoice;
import dev.lapwing.jobs.storage.PlannedFollowUp;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** Tells what follow-up work waits for: a decision, the membrane system, a treatment, the workshop. */
@ApplicationScoped
class WaitsOfWork implements WorkWaits {
    private static final Wait DECISION =
            new Wait(true, "the coordinator has to decide between rework and sealant replacement");
    private static final Wait WORKSHOP = new Wait(false, "the roof was referred to a workshop, which comes first");

    @Inject
    SealantSituations situations;

    @Inject
    Clock clock;

    @Override
    public Map<UUID, List<Wait>> of(Collection<CareTask> tasks) {
        List<UUID> ids = tasks.stream()
                .filter(task -> task.state.open())
                .map(task -> task.id)
                .toList();
        Map<UUID, PlannedFollowUp> planned = PlannedFollowUp.ofTasks(ids).stream()
                .collect(Collectors.toMap(followUp -> followUp.taskId, followUp -> followUp));
        List<CareTask> sealing = tasks.stream()
                .filter(task -> task.state.open() && needsSealant(task, planned.get(task.id)))
                .toList();
        Map<UUID, List<Wait>> waits = new HashMap<>();
        OpenChoice.undecidedOf(ids).forEach(id -> add(waits, id, DECISION));
        var known = situations.of(sealing.stream().map(task -> task.unit).toList(), clock.instant());
        for (CareTask task : sealing) {
            for (SealantAnswer first : known.get(task.unit.id).comesFirst()) {
                add(waits, task.id, new Wait(false, first.because()));
            }
        }
        List<UUID> referred = referredSheets(planned.values());
        sealing.stream()
                .filter(task -> planned.containsKey(task.id) && referred.contains(planned.get(task.id).sheetId))
                .forEach(task -> add(waits, task.id, WORKSHOP));
        return waits;
    }

    @Override
    public boolean holds(CareTask task) {
        PlannedFollowUp planned = PlannedFollowUp.findById(task.id);
        return planned != null
                && planned.holds
                && !Hold.openOf(List.of(task.unit.id)).isEmpty();
    }

    private static boolean needsSealant(CareTask task, PlannedFollowUp planned) {
        Work work = WorkOfTask.of(task, planned);
        return work != null && work.needsSealant();
    }

    /** Returns those of the sheets behind follow-ups whose referral to the workshop is still open. */
    private static List<UUID> referredSheets(Collection<PlannedFollowUp> followUps) {
        List<UUID> sheets =
                followUps.stream().map(followUp -> followUp.sheetId).distinct().toList();
        return PlannedFollowUp.openReferrals(sheets, TaskState.OPEN);
    }

    private static void add(Map<UUID, List<Wait>> waits, UUID task, Wait wait) {
        waits.computeIfAbsent(task, none -> new ArrayList<>()).add(wait);
    }
}
