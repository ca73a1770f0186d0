package dev.lapwing.jobs.application;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Unit;
import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.material.BeadRun;
import dev.lapwing.jobs.domain.material.TubeNeed;
import dev.lapwing.jobs.domain.measure.Length;
import dev.lapwing.jobs.domain.measure.Volume;
import dev.lapwing.jobs.domain.sealant.Sealant;
import dev.lapwing.jobs.domain.verdict.Work;
import dev.lapwing.jobs.storage.PlannedFollowUp;
import dev.lapwing.jobs.storage.RecordedFinding;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works out how much sealant the findings of a sheet ask for. */
@ApplicationScoped
public class MaterialNeeds {
    @Inject
    SheetSettings settings;

    @Inject
    RoofPlans plans;

    @Inject
    DepotLists lists;

    @Inject
    SealantSituations situations;

    /**
     * Sealant to take along.
     *
     * @param tubeOf whose tube was taken, in words
     */
    public record Material(TubeNeed need, String tubeOf) {}

    private record Tube(Volume content, String of) {}

    /**
     * Returns what a task takes: for follow-up work by what the sheet found that led to it, else by what was found so
     * far. Empty when no bead is asked for.
     */
    public Optional<Material> of(CareTask task, Instant now) {
        Work work = WorkOfTask.of(task);
        if (work != null && !work.needsSealant()) {
            return Optional.empty();
        }
        BeadRun run =
                work == Work.SEALANT_REPLACEMENT ? wholeRoof(task.unit) : BeadRun.of(found(task), settings.bead());
        if (run.parts().isEmpty() && run.notCounted().isEmpty()) {
            return Optional.empty();
        }
        Tube tube = tube(task, now);
        return Optional.of(new Material(TubeNeed.of(run, settings.bead(), tube.content()), tube.of()));
    }

    private BeadRun wholeRoof(Unit unit) {
        Length run = plans.of(unit).sealantRun();
        var rounded = new Length(run.metres().setScale(2, RoundingMode.CEILING));
        return new BeadRun(List.of(new BeadRun.Part("all sealant of the roof, by its plan", rounded, true)), List.of());
    }

    private static List<Finding> found(CareTask task) {
        List<RecordedFinding> found = new ArrayList<>();
        PlannedFollowUp planned = PlannedFollowUp.findById(task.id);
        if (planned != null) {
            found.addAll(RecordedFinding.of(planned.sheetId));
        }
        found.addAll(RecordedFinding.of(task.id));
        return found.stream().map(RecordedFinding::finding).toList();
    }

    /** Takes the tube of the sealant in use, else of one that belongs to the roof's system, else the usual one. */
    private Tube tube(CareTask task, Instant now) {
        String depot = task.depot.code;
        Optional<Sealant> used = SheetLog.sealantUsed(task.id).flatMap(name -> lists.sealant(depot, name));
        String system = situations.of(task.unit, now).system();
        return used.or(() -> lists.sealants(depot).stream()
                        .filter(sealant -> system != null && sealant.belongsTo(system))
                        .findFirst())
                .map(sealant -> new Tube(sealant.tube(), sealant.name()))
                .orElseGet(() -> new Tube(settings.usualTube(), "a usual tube, until the sealant is known"));
    }
}
