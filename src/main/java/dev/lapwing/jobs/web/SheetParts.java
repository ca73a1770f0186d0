package dev.lapwing.jobs.web;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.MaterialNeeds;
import dev.lapwing.jobs.application.ReadyingRoofs;
import dev.lapwing.jobs.application.RoofLists;
import dev.lapwing.jobs.application.TimeNeeds;
import dev.lapwing.jobs.domain.sheet.RoofReadiness;
import dev.lapwing.jobs.domain.sheet.SheetEventKind;
import dev.lapwing.jobs.storage.RecordedEvent;
import dev.lapwing.web.Dates;
import dev.lapwing.web.PersonNames;
import dev.lapwing.web.Shell;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** The parts of a sheet beside cautions, findings and signature, for the templates that include them. */
@Named("sheetParts")
@RequestScoped
public class SheetParts {
    private static final Set<SheetEventKind> BEFORE_LOOKING = Set.of(
            SheetEventKind.CLEANER,
            SheetEventKind.TOO_DIRTY,
            SheetEventKind.WASHED,
            SheetEventKind.STOPPED,
            SheetEventKind.BEGUN,
            SheetEventKind.BEGUN_EARLY);

    @Inject
    RoofLists lists;

    @Inject
    ReadyingRoofs roofs;

    @Inject
    SealantParts sealants;

    @Inject
    MaterialNeeds materials;

    @Inject
    TimeNeeds times;

    @Inject
    PersonNames names;

    @Inject
    SheetHands hands;

    @Inject
    Shell shell;

    @Inject
    Clock clock;

    /** Returns what may touch the roof, and the wash. */
    @Transactional
    public CleaningPart cleaning(UUID id) {
        CareTask task = CareTask.require(id);
        RoofReadiness readiness = roofs.readiness(task);
        return new CleaningPart(
                id,
                hands.mayFillIn(task),
                lists.cleaners(task),
                Dates.time(readiness.washedAt(), task.depot.zoneId()),
                readiness.tooDirty());
    }

    /** Returns how the roof dries, and what was noted before anyone looked at it. */
    @Transactional
    public DryingPart drying(UUID id) {
        CareTask task = CareTask.require(id);
        ZoneId zone = task.depot.zoneId();
        RoofReadiness readiness = roofs.readiness(task);
        Instant ready = roofs.readyAt(readiness);
        boolean drying = ready != null && clock.instant().isBefore(ready);
        return new DryingPart(
                id,
                hands.mayFillIn(task),
                standing(readiness, drying, Dates.time(ready, zone)),
                readiness.stopped(),
                drying,
                RecordedEvent.of(id).stream()
                        .filter(event -> BEFORE_LOOKING.contains(event.kind))
                        .map(event -> new DryingPart.Line(
                                Dates.time(event.recordedAt, zone),
                                names.of(event.recordedBy) + (event.byLink ? " (by link)" : ""),
                                event.event().inWords()))
                        .toList());
    }

    private static String standing(RoofReadiness readiness, boolean drying, String ready) {
        if (readiness.tooDirty()) {
            return "Wash first.";
        }
        if (readiness.begun()) {
            return "Looking has begun.";
        }
        if (readiness.washedAt() == null) {
            return "No wash is noted. Look at a dry roof only.";
        }
        return drying ? "The roof dries until " + ready + "." : "The roof has had its drying time, " + ready + ".";
    }

    /** Returns the sealants that may go on the roof, or null when the task puts none on it. */
    @Transactional
    public SealantPart sealant(UUID id) {
        return sealants.of(CareTask.require(id));
    }

    /** Returns what the work takes. */
    @Transactional
    public MaterialPart material(UUID id) {
        return material(CareTask.require(id));
    }

    MaterialPart material(CareTask task) {
        String time = times.of(task.kind).inWords();
        return materials
                .of(task, clock.instant())
                .map(material -> new MaterialPart(
                        tubes(material),
                        material.need().metricLines(),
                        material.need().usLines(),
                        time))
                .orElseGet(() -> new MaterialPart(null, List.of(), List.of(), time));
    }

    private static String tubes(MaterialNeeds.Material material) {
        int tubes = material.need().tubes();
        return (tubes == 1 ? "1 tube of " : tubes + " tubes of ")
                + material.need().tube().millilitres().stripTrailingZeros().toPlainString() + " mL ("
                + material.tubeOf() + ")";
    }

    /** Returns the button that stops everything. */
    @Transactional
    public ReferPart refer(UUID id) {
        CareTask task = CareTask.require(id);
        boolean open = task.state.open() && task.kind.onTheRoof() && hands.own(task);
        return new ReferPart(id, open, shell.fullName());
    }
}
