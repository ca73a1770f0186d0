package dev.lapwing.jobs.application;

import dev.lapwing.care.Signer;
import dev.lapwing.care.application.FinishingTasks;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.finding.FindingEntry;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import dev.lapwing.jobs.storage.RecordedFinding;
import dev.lapwing.jobs.storage.WithdrawnFinding;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** Writes down what a tech finds while the task is under way. */
@ApplicationScoped
public class RecordingFindings {
    private static final int MOST_AT_ONCE = 200;
    private static final int MOST_OF_A_TASK = 1000;

    @Inject
    FinishingTasks tasks;

    @Inject
    RoofPlans plans;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Adds findings to the sheet of a task, all or none; wrong fields are named like {@code [0].kind}. */
    @Transactional
    public List<RecordedFinding> record(UUID taskId, List<FindingEntry> entries, Signer by) {
        List<Finding> findings = checked(entries, plans.of(CareTask.require(taskId).unit));
        CareTask task = tasks.underWay(taskId, by);
        int position = (int) RecordedFinding.everRecorded(task.id);
        if (position + findings.size() > MOST_OF_A_TASK) {
            throw Refused.conflict("A sheet takes at most " + MOST_OF_A_TASK + " findings");
        }
        Instant now = clock.instant();
        List<RecordedFinding> recorded = new ArrayList<>();
        for (Finding finding : findings) {
            recorded.add(store(task, position++, finding, by, now));
        }
        return recorded;
    }

    /** Takes a finding back that was wrong; it stays on record. */
    @Transactional
    public void takeBack(UUID taskId, UUID findingId, Signer by) {
        CareTask task = tasks.underWay(taskId, by);
        RecordedFinding finding = RecordedFinding.findById(findingId);
        if (finding == null || !finding.taskId.equals(task.id)) {
            throw Refused.notFound("finding " + findingId + " on this sheet");
        }
        if (WithdrawnFinding.findById(findingId) != null) {
            throw Refused.conflict("The finding was taken back already");
        }
        var withdrawn = new WithdrawnFinding();
        withdrawn.findingId = findingId;
        withdrawn.taskId = task.id;
        withdrawn.withdrawnAt = clock.instant();
        withdrawn.withdrawnBy = by.username();
        withdrawn.byLink = by.byLink();
        withdrawn.persist();
    }

    /** Changes a finding: the old one is taken back, and a new one added; both or neither. */
    @Transactional
    public RecordedFinding change(UUID taskId, UUID findingId, FindingEntry entry, Signer by) {
        takeBack(taskId, findingId, by);
        return record(taskId, List.of(entry), by).get(0);
    }

    private static List<Finding> checked(List<FindingEntry> entries, RoofPlan plan) {
        var errors = new FieldErrors();
        errors.check(!entries.isEmpty(), "body", "names no finding");
        errors.check(entries.size() <= MOST_AT_ONCE, "body", "holds more than " + MOST_AT_ONCE + " findings");
        errors.refuseIfAny();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            check(entries.get(i), plan, "[" + i + "]", errors, findings);
        }
        errors.refuseIfAny();
        return findings;
    }

    private static void check(
            FindingEntry entry, RoofPlan plan, String place, FieldErrors errors, List<Finding> accepted) {
        if (!errors.present(entry, place)) {
            return;
        }
        FindingEntry.Checked checked = entry.placedOn(plan).check();
        if (checked instanceof FindingEntry.Checked.Accepted fine) {
            accepted.add(fine.finding());
        } else if (checked instanceof FindingEntry.Checked.Refused refused) {
            refused.errors().forEach(error -> errors.check(false, place + "." + error.field(), error.message()));
        }
    }

    private RecordedFinding store(CareTask task, int position, Finding finding, Signer by, Instant at) {
        var recorded = new RecordedFinding();
        recorded.id = ids.next();
        recorded.taskId = task.id;
        recorded.position = position;
        recorded.setFinding(finding);
        recorded.recordedAt = at;
        recorded.recordedBy = by.username();
        recorded.byLink = by.byLink();
        recorded.persist();
        return recorded;
    }
}
