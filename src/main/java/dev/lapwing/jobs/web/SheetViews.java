package dev.lapwing.jobs.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Roof;
import dev.lapwing.jobs.application.ReadingCautions;
import dev.lapwing.jobs.application.RoofPlans;
import dev.lapwing.jobs.application.SheetReference;
import dev.lapwing.jobs.domain.ladder.LadderSetup;
import dev.lapwing.jobs.domain.measure.Length;
import dev.lapwing.web.Shell;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;

/** Gathers what the page of a sheet shows, in the order of the work. */
@ApplicationScoped
class SheetViews {
    @Inject
    SheetReference reference;

    @Inject
    ReadingCautions cautions;

    @Inject
    SheetStates states;

    @Inject
    RoofPlans plans;

    @Inject
    ObjectMapper json;

    SheetView of(CareTask task, Shell shell) {
        SheetState state = states.of(task, shell);
        RoofPlans.Current plan = plans.current(task.unit);
        return new SheetView(
                task.id,
                shell.username(),
                task.unit.number,
                task.kind.label(),
                task.state.word(),
                task.why,
                cautions.of(task),
                facts(task),
                LadderSetup.forLanding(new Length(task.unit.heightMetres)).lines(),
                reference.washSteps().steps(),
                reference.lookSteps().steps(),
                PlanView.of(plan.plan()),
                written(RoofPlanAnswer.of(task.unit, plan)),
                state,
                written(state));
    }

    private static List<SheetView.Fact> facts(CareTask task) {
        Roof roof = task.unit.roof;
        return List.of(
                new SheetView.Fact("Unit", task.unit.kind.word() + " at " + task.depot.name),
                new SheetView.Fact("Surface", roof.surface.word()),
                new SheetView.Fact("Footing", footing(roof)),
                new SheetView.Fact("Sealant", membrane(roof)));
    }

    private static String footing(Roof roof) {
        return switch (roof.footing) {
            case WALKABLE -> "walkable as recorded";
            case NO_WALK -> "no-walk: from the ladder only";
            case UNKNOWN -> "not recorded: treat it as no-walk, from the ladder only";
        };
    }

    private static String membrane(Roof roof) {
        return roof.membraneSystem == null || roof.confirmedBy == null
                ? "none before the dealer or maker has confirmed the membrane system"
                : "only of the roof's own system, " + roof.membraneSystem;
    }

    private String written(Object shown) {
        try {
            return json.writeValueAsString(shown);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("what a sheet shows cannot be written as JSON", e);
        }
    }
}
