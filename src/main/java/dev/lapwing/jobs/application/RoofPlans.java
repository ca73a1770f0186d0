package dev.lapwing.jobs.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import dev.lapwing.jobs.storage.PlanVersion;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Optional;

/** Knows the roof plan of every unit: its own, or that of its kind. The length is always that of the register. */
@ApplicationScoped
public class RoofPlans {
    @Inject
    SheetReference reference;

    /**
     * The plan of a unit.
     *
     * @param version 0 while it is that of its kind
     * @param savedAt when it was saved, null with version 0
     * @param savedBy sign-in name of who saved it, null with version 0
     */
    public record Current(RoofPlan plan, int version, Instant savedAt, String savedBy) {}

    /** Returns the plan that counts. */
    @Transactional
    public RoofPlan of(Unit unit) {
        return current(unit).plan();
    }

    /** Returns the plan that counts, with who saved it when. */
    @Transactional
    public Current current(Unit unit) {
        return PlanVersion.latest(unit.id).map(own -> current(unit, own)).orElseGet(() -> ofKind(unit));
    }

    /** Returns an earlier plan; version 0 is that of the unit's kind. */
    @Transactional
    public Optional<Current> version(Unit unit, int version) {
        return version == 0
                ? Optional.of(ofKind(unit))
                : PlanVersion.of(unit.id, version).map(own -> current(unit, own));
    }

    private Current ofKind(Unit unit) {
        return new Current(
                reference.roofPlans().forUnit(unit.kind.word(), unit.lengthMetres.doubleValue()), 0, null, null);
    }

    private static Current current(Unit unit, PlanVersion own) {
        RoofPlan plan = RoofPlan.fitting(unit.lengthMetres.doubleValue(), own.widthMetres, own.placed());
        return new Current(plan, own.version, own.savedAt, own.savedBy);
    }
}
