package dev.lapwing.jobs.web;

import dev.lapwing.care.TaskFacet;
import dev.lapwing.photos.web.PhotoAnswer;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

/** Adds the photos of its sheet to the answer of a task. */
@ApplicationScoped
class PhotosFacet implements TaskFacet {
    @Override
    public String name() {
        return "photos";
    }

    @Override
    public Object valueOf(UUID taskId) {
        return PhotoAnswer.listOf(taskId);
    }
}
