package dev.lapwing.care.web;

import dev.lapwing.care.TaskStory;
import java.util.List;

/**
 * A task as its page shows it.
 *
 * @param mine whether the person looking has it, or could take it
 * @param move word of the next move that this person can make here: accept, start, or null for none
 */
record TaskView(
        DueRow row,
        boolean open,
        String window,
        List<String> cautions,
        List<Fact> roof,
        List<Step> steps,
        List<TaskStory.Story> stories,
        boolean mine,
        String move,
        boolean coordinator) {

    /** A fact of the roof with its name. */
    record Fact(String name, String value) {}

    /** One step in the life of the task. */
    record Step(String when, String who, String state, String words) {}
}
