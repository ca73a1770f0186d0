package dev.lapwing.jobs.web;

import dev.lapwing.care.WorkWaits;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.storage.Decision;
import dev.lapwing.jobs.storage.MembraneWord;
import dev.lapwing.jobs.storage.OpenChoice;
import dev.lapwing.web.Dates;
import dev.lapwing.web.PersonNames;
import dev.lapwing.web.Shell;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.UUID;

/** The part of a task's page that the sheets speak for. */
@Named("taskParts")
@RequestScoped
public class TaskParts {
    @Inject
    WorkWaits waits;

    @Inject
    SheetParts parts;

    @Inject
    SheetHands hands;

    @Inject
    PersonNames names;

    @Inject
    Shell shell;

    @Inject
    Clock clock;

    @Transactional
    public TaskPart of(UUID id) {
        CareTask task = CareTask.require(id);
        boolean membrane = task.kind == TaskKind.CONFIRM_MEMBRANE;
        return new TaskPart(
                id,
                shell.coordinator(),
                waits.of(List.of(task)).getOrDefault(id, List.of()),
                options(id),
                decided(task),
                membrane,
                membrane ? words(task) : List.of(),
                membrane && task.state.open() && hands.own(task),
                task.unit.roof.membraneSystem,
                task.depot.dateAt(clock.instant()).toString(),
                parts.material(task));
    }

    private static List<TaskPart.Option> options(UUID id) {
        OpenChoice choice = OpenChoice.findById(id);
        return choice == null
                ? List.of()
                : choice.options().stream()
                        .map(option -> new TaskPart.Option(
                                option.work().word(), option.work().word().replace('-', ' '), option.speaksFor()))
                        .toList();
    }

    private String decided(CareTask task) {
        Decision decision = Decision.findById(task.id);
        return decision == null
                ? null
                : "Decided: " + decision.chosen.word().replace('-', ' ') + ", by " + names.of(decision.decidedBy) + ", "
                        + Dates.time(decision.decidedAt, task.depot.zoneId()) + ": " + decision.reason;
    }

    private List<String> words(CareTask task) {
        return MembraneWord.ofTask(task.id).stream()
                .map(word -> word.overruled
                        ? word.system + ", on the word of " + names.of(word.recordedBy) + "; source: " + word.source
                        : word.system + ", confirmed by " + word.source + " on " + Dates.day(word.givenOn))
                .toList();
    }
}
