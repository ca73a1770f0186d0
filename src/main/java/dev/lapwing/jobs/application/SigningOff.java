package dev.lapwing.jobs.application;

import dev.lapwing.care.Signer;
import dev.lapwing.care.application.Departures;
import dev.lapwing.care.application.FinishingTasks;
import dev.lapwing.care.application.OpeningHolds;
import dev.lapwing.care.domain.HoldCause;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.fleet.Roof;
import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.sheet.SignOffEntry;
import dev.lapwing.jobs.domain.verdict.Outcome;
import dev.lapwing.jobs.domain.verdict.Reason;
import dev.lapwing.jobs.domain.verdict.RuleTable;
import dev.lapwing.jobs.domain.verdict.Situation;
import dev.lapwing.jobs.storage.RecordedFinding;
import dev.lapwing.jobs.storage.SheetEntries;
import dev.lapwing.jobs.storage.SignedSheet;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

/** Ends a task with a signature: the findings are judged, what follows is planned, and holds end or begin. */
@ApplicationScoped
public class SigningOff {
    private static final int LONGEST_WORDS = 1000;

    @Inject
    RuleTable rules;

    @Inject
    FinishingTasks tasks;

    @Inject
    Departures departures;

    @Inject
    SheetStore sheets;

    @Inject
    PlanningFollowUps followUps;

    @Inject
    OpeningHolds holds;

    @Inject
    EndingHolds ending;

    @Inject
    Clock clock;

    /**
     * What a sign-off led to.
     *
     * @param followUps the tasks that follow, soonest first
     * @param released whether the unit has no open hold left
     * @param reasons the rules that applied, then what keeps holds open
     */
    public record SignedOff(SignedSheet sheet, List<UUID> followUps, boolean released, List<String> reasons) {}

    /** Signs the sheet of a task that is under way. */
    @Transactional
    public SignedOff signOff(UUID taskId, SignOffEntry entry, Signer signer) {
        refuseWrong(entry);
        CareTask task = tasks.underWay(taskId, signer);
        refuseUnseen(task, entry);
        // the databases keep microseconds, and holds are compared with sheets
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        Outcome outcome = rules.judge(findingsOf(task), situation(task, now));
        List<CareTask> covered = coveredBy(task);
        SignedSheet sheet = sheets.store(task, covered, entry, signer, outcome, now);
        finish(task, covered, sheet);
        List<CareTask> planned = followUps.plan(task, sheet, outcome);
        if (outcome.hold()) {
            holds.open(task.unit, HoldCause.FINDING, task.id, holdWords(outcome), now, signer.username());
        }
        List<String> reasons = new ArrayList<>(sheet.reasons);
        reasons.addAll(ending.after(sheet, signer));
        boolean released = Hold.openOf(List.of(task.unit.id)).isEmpty();
        return new SignedOff(sheet, planned.stream().map(work -> work.id).toList(), released, reasons);
    }

    private static void refuseWrong(SignOffEntry entry) {
        var errors = new FieldErrors();
        entry.check().forEach(error -> errors.check(false, error.field(), error.message()));
        errors.refuseIfAny();
    }

    /** What somebody else entered meanwhile is looked at before it is signed for. */
    private static void refuseUnseen(CareTask task, SignOffEntry entry) {
        long entries = SheetEntries.of(task.id);
        if (entry.seen() != null && entry.seen() != entries) {
            throw Refused.conflict(
                    "The sheet has entries that you have not seen. Look at the findings, then sign again.");
        }
    }

    private static List<Finding> findingsOf(CareTask task) {
        return RecordedFinding.of(task.id).stream()
                .map(RecordedFinding::finding)
                .toList();
    }

    private Situation situation(CareTask task, Instant now) {
        Roof roof = task.unit.roof;
        boolean confirmed = roof.membraneSystem != null && roof.confirmedBy != null;
        return new Situation(now, null, departures.next(task.unit, now).orElse(null), confirmed);
    }

    /** One look at the roof covers the strikes before it; an inspection with findings of its own is signed by itself. */
    private List<CareTask> coveredBy(CareTask task) {
        return tasks.alsoDoneBy(task).stream()
                .filter(other -> RecordedFinding.of(other.id).isEmpty())
                .toList();
    }

    private void finish(CareTask task, List<CareTask> covered, SignedSheet sheet) {
        String verdict = "verdict " + sheet.verdict.word().replace('-', ' ');
        String signed = "Signed off by " + sheet.signedName + ", " + verdict + ": ";
        tasks.finish(task, sheet.signedBy, OneLine.of(signed + sheet.statement, LONGEST_WORDS), sheet.signedAt);
        String words = "Done by the " + task.kind.label() + " that " + sheet.signedName
                + " signed off: one look at the roof covers both, " + verdict;
        covered.forEach(other -> tasks.finish(other, sheet.signedBy, words, sheet.signedAt));
    }

    private static String holdWords(Outcome outcome) {
        String found = outcome.reasons().stream()
                .filter(Reason::hold)
                .map(Reason::inWords)
                .collect(Collectors.joining("; "));
        return OneLine.of(found, LONGEST_WORDS);
    }
}
