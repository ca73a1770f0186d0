package dev.lapwing.jobs.web;

import dev.lapwing.care.WorkWaits;
import java.util.List;
import java.util.UUID;

/**
 * What the page of a task shows of decisions, confirmations and material.
 *
 * @param waits what has to come before the work may begin
 * @param options what the coordinator can choose; empty when there is nothing to decide
 * @param decided what was chosen, in words, or null
 * @param membrane whether the task asks for the membrane system
 * @param words what was entered of the membrane system, in words
 * @param mayConfirm whether the person who looks at it can enter it
 * @param system the system as recorded, or null
 * @param today the date at the depot
 */
public record TaskPart(
        UUID id,
        boolean coordinator,
        List<WorkWaits.Wait> waits,
        List<Option> options,
        String decided,
        boolean membrane,
        List<String> words,
        boolean mayConfirm,
        String system,
        String today,
        MaterialPart material) {

    /** One way to go. */
    public record Option(String word, String words, List<String> speaksFor) {}
}
