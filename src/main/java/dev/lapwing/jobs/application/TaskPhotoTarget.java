package dev.lapwing.jobs.application;

import dev.lapwing.care.Signer;
import dev.lapwing.care.application.FinishingTasks;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.storage.RecordedFinding;
import dev.lapwing.photos.PhotoSource;
import dev.lapwing.photos.application.KeepingPhotos;
import dev.lapwing.photos.application.PhotoPlace;
import dev.lapwing.platform.FieldErrors;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.UUID;

/** Decides whether photos may be added to the sheet of a task, and what they show. */
@ApplicationScoped
public class TaskPhotoTarget {
    private static final int LONGEST_ZONE = 120;

    @Inject
    FinishingTasks tasks;

    /**
     * Returns the task as what photos are added to.
     *
     * @param zone where on the roof, or null
     * @param finding place of a finding on the sheet, from 0, as it was sent, or null
     */
    @Transactional
    public KeepingPhotos.Target of(UUID taskId, String zone, String finding, Signer by) {
        CareTask task = tasks.begun(taskId, by);
        var errors = new FieldErrors();
        errors.atMost(zone, LONGEST_ZONE, "zone");
        Integer place = blank(finding) ? null : place(task, finding.strip(), errors);
        errors.refuseIfAny();
        return new KeepingPhotos.Target(
                PhotoSource.TASK, task.id, task.unit, new PhotoPlace(blank(zone) ? null : zone.strip(), place));
    }

    private static Integer place(CareTask task, String finding, FieldErrors errors) {
        long findings = RecordedFinding.count("taskId", task.id);
        boolean number = finding.matches("[0-9]{1,4}");
        errors.check(
                number && Integer.parseInt(finding) < findings,
                "finding",
                "is not the place of a finding on this sheet, from 0 to " + (findings - 1));
        return number ? Integer.valueOf(finding) : null;
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
