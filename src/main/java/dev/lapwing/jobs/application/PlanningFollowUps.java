package dev.lapwing.jobs.application;

import dev.lapwing.care.application.OpeningFollowUps;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.domain.verdict.Choice;
import dev.lapwing.jobs.domain.verdict.FollowUp;
import dev.lapwing.jobs.domain.verdict.Outcome;
import dev.lapwing.jobs.domain.verdict.Reason;
import dev.lapwing.jobs.domain.verdict.Work;
import dev.lapwing.jobs.storage.OpenChoice;
import dev.lapwing.jobs.storage.PlannedFollowUp;
import dev.lapwing.jobs.storage.SignedSheet;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Turns what a verdict asks for into tasks. */
@ApplicationScoped
class PlanningFollowUps {
    private static final int LONGEST_WHY = 1000;

    @Inject
    OpeningFollowUps tasks;

    /** Opens a task for each follow-up of a sheet, soonest and first needed first. */
    List<CareTask> plan(CareTask task, SignedSheet sheet, Outcome outcome) {
        Set<Work> holding = outcome.holdingWork();
        List<CareTask> opened = new ArrayList<>();
        for (FollowUp followUp : outcome.followUps()) {
            var wanted = new OpeningFollowUps.Wanted(
                    WorkOfTask.kindFor(followUp.work()),
                    "follow-up " + task.id + " " + followUp.work().word(),
                    OneLine.of(why(followUp, outcome), LONGEST_WHY),
                    followUp.due());
            CareTask work = tasks.open(task.unit, wanted, sheet.signedBy, sheet.signedAt);
            store(work, sheet, followUp, holding.contains(followUp.work()));
            if (followUp.work() == Work.REWORK) {
                outcome.toDecide().ifPresent(choice -> ask(work, sheet, choice));
            }
            opened.add(work);
        }
        return opened;
    }

    private static void ask(CareTask work, SignedSheet sheet, Choice choice) {
        var open = new OpenChoice();
        open.taskId = work.id;
        open.sheetId = sheet.taskId;
        open.setChoice(choice);
        open.persist();
    }

    private static String why(FollowUp followUp, Outcome outcome) {
        String waits = followUp.waitsFor().stream()
                .sorted()
                .map(PlanningFollowUps::words)
                .collect(Collectors.joining(", "));
        String because = outcome.reasons().stream()
                .filter(reason -> followUp.rules().contains(reason.rule()))
                .map(Reason::inWords)
                .collect(Collectors.joining("; "));
        return wanted(followUp.work()) + (waits.isEmpty() ? "" : ", after " + waits) + ": " + because;
    }

    private static String wanted(Work work) {
        return work == Work.CONFIRM_MEMBRANE ? "confirm membrane system with the dealer or maker" : words(work);
    }

    private static String words(Work work) {
        return work.word().replace('-', ' ');
    }

    private static void store(CareTask work, SignedSheet sheet, FollowUp followUp, boolean holds) {
        var planned = new PlannedFollowUp();
        planned.taskId = work.id;
        planned.sheetId = sheet.taskId;
        planned.work = followUp.work();
        planned.urgency = followUp.urgency();
        planned.dueAt = followUp.due();
        planned.holds = holds;
        planned.persist();
    }
}
