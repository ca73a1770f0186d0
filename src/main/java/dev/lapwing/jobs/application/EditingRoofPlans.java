package dev.lapwing.jobs.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.jobs.domain.roof.ObjectType;
import dev.lapwing.jobs.domain.roof.PlacedObject;
import dev.lapwing.jobs.domain.roof.PlanCheck;
import dev.lapwing.jobs.storage.PlanVersion;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.UUID;

/** Saves roof plans as the coordinator draws them; every version stays. */
@ApplicationScoped
public class EditingRoofPlans {
    private static final int MOST_OBJECTS = 120;

    @Inject
    RoofPlans plans;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Saves a plan as the next version; refuses one that was drawn from another version than the one that counts. */
    @Transactional
    public RoofPlans.Current save(String number, PlanEntry entry, String by) {
        Unit unit = Unit.require(number);
        List<PlacedObject> objects = checked(unit, entry);
        RoofPlans.Current now = locked(unit, entry.version());
        return add(unit, now.version() + 1, entry.widthMetres(), objects, by);
    }

    /** Goes back to the version before the one that counts, as a new version. */
    @Transactional
    public RoofPlans.Current undo(String number, int version, String by) {
        Unit unit = Unit.require(number);
        RoofPlans.Current now = locked(unit, version);
        if (now.version() == 0) {
            throw Refused.conflict("The plan was never changed");
        }
        RoofPlans.Current before = plans.version(unit, now.version() - 1).orElseThrow();
        return add(
                unit,
                now.version() + 1,
                before.plan().widthMetres(),
                before.plan().placed(),
                by);
    }

    /** Refuses a plan that could not be saved, with every wrong field named. */
    @Transactional
    public void examine(String number, PlanEntry entry) {
        checked(Unit.require(number), entry);
    }

    private static List<PlacedObject> checked(Unit unit, PlanEntry entry) {
        var errors = new FieldErrors();
        List<PlacedObject> objects = entry.read(errors);
        errors.check(objects.size() <= MOST_OBJECTS, "objects", "has at most " + MOST_OBJECTS);
        errors.refuseIfAny();
        PlanCheck.of(unit.lengthMetres.doubleValue(), entry.widthMetres(), objects)
                .forEach(error -> errors.check(false, error.field(), error.message()));
        errors.refuseIfAny();
        return objects.stream()
                .filter(object -> object.type() != ObjectType.EDGE)
                .toList();
    }

    /** Keeps other editors of the same unit waiting until this transaction ends. */
    private RoofPlans.Current locked(Unit unit, int version) {
        Unit.getEntityManager()
                .createNativeQuery("select id from unit where id = :id for update", UUID.class)
                .setParameter("id", unit.id)
                .getSingleResult();
        RoofPlans.Current now = plans.current(unit);
        if (now.version() != version) {
            throw Refused.conflict("The plan was changed meanwhile: it is at version " + now.version()
                    + ", and version " + version + " was edited. Open it again");
        }
        return now;
    }

    private RoofPlans.Current add(Unit unit, int number, double width, List<PlacedObject> objects, String by) {
        var version = new PlanVersion();
        version.id = ids.next();
        version.unitId = unit.id;
        version.version = number;
        version.widthMetres = width;
        version.savedAt = clock.instant();
        version.savedBy = by;
        objects.stream().map(PlanVersion.StoredObject::of).forEach(version.objects::add);
        version.persistAndFlush();
        return plans.current(unit);
    }
}
