package dev.lapwing.jobs.web;

import dev.lapwing.jobs.domain.sheet.Text;
import java.util.List;
import java.util.UUID;

/**
 * What the page of a sheet shows, in the order of the work.
 *
 * @param username sign-in name of who looks; what they enter is kept on their phone under it
 * @param planJson the plan as the API answers it, by which the script names places
 * @param stateJson the state once more, for the script
 */
public record SheetView(
        UUID id,
        String username,
        String unit,
        String kind,
        String word,
        String why,
        List<Text> cautions,
        List<Fact> facts,
        List<String> ladder,
        List<Text> washSteps,
        List<Text> lookSteps,
        PlanView plan,
        String planJson,

        SheetState state,
        String stateJson) {

    /** Returns the dots of the findings on the plan. */
    public List<PlanView.Dot> dots() {
        return plan.dots(state.findings());
    }

    /** A fact of the roof with its name. */
    public record Fact(String name, String value) {}
}
