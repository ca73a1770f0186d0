package dev.lapwing.jobs.domain.sheet;

import dev.lapwing.jobs.domain.data.Table;
import java.util.List;

/**
 * Clearing and washing, step by step.
 *
 * @param steps in the order of the work
 */
public record WashSteps(List<Text> steps) {
    public WashSteps {
        steps = List.copyOf(steps);
    }

    /**
     * Reads {@code shared/jobs/wash-steps.csv}.
     *
     * @throws dev.lapwing.jobs.domain.data.BadReferenceData when a row is wrong
     */
    public static WashSteps read(String csv) {
        return new WashSteps(Table.read("wash-steps.csv", csv, "id", "en", "es", "fr").stream()
                .map(Text::read)
                .toList());
    }
}
