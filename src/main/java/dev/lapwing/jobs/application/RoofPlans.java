package dev.lapwing.jobs.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;

/** Knows the plan of each unit's roof. */
@ApplicationScoped
public class RoofPlans {
    @Inject
    SheetReference reference;

    public RoofPlan of(Unit unit) {
        return reference.roofPlans().forUnit(unit.kind.word(), unit.lengthMetres.doubleValue());
    }
}
