package dev.lapwing.care;

import dev.lapwing.care.storage.CareTask;
import java.util.List;
import java.util.Optional;

/** Adds to the page of a task what another area knows of it. */
public interface TaskStory {
    /**
     * What is told.
     *
     * @param title a heading of a few words
     * @param lead one sentence
     */
    record Story(String title, String lead, List<Line> lines) {}

    /**
     * One thing that happened, or will.
     *
     * @param ahead whether it is still to come
     */
    record Line(String when, String words, boolean ahead) {}

    /** Returns what there is to tell of a task, or empty. Called inside a transaction. */
    Optional<Story> of(CareTask task);
}
