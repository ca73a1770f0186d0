package dev.lapwing.care.web;

import dev.lapwing.care.RoofCautions;
import dev.lapwing.care.TaskStory;
import dev.lapwing.care.application.MovingTasks;
import dev.lapwing.care.domain.DueWindow;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskMove;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.TaskStep;
import dev.lapwing.fleet.Roof;
import dev.lapwing.web.Dates;
import dev.lapwing.web.PersonNames;
import dev.lapwing.web.Shell;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gathers what the page of a task shows. */
@ApplicationScoped
class TaskViews {
    @Inject
    DueRows rows;

    @Inject
    PersonNames names;

    @Inject
    Instance<TaskStory> stories;

    @Inject
    RoofCautions cautions;

    @Inject
    Clock clock;

    TaskView of(CareTask task, Shell shell) {
        boolean mine = MovingTasks.free(task) || task.assignee.equals(shell.username());
        return new TaskView(
                rows.of(List.of(task), clock.instant()).get(0),
                task.state.open(),
                window(task),
                cautions.inShort(task.unit.roof, "en"),
                facts(task.unit.roof),
                steps(task),
                stories.stream()
                        .map(story -> story.of(task))
                        .flatMap(Optional::stream)
                        .toList(),
                mine,
                shell.coordinator() && task.assignee != null || shell.tech() && mine ? nextMove(task) : null,
                shell.coordinator());
    }

    private static String window(CareTask task) {
        if (task.kind == TaskKind.STRIKE_INSPECTION) {
            return "at once, since " + Dates.time(task.dueAt, task.depot.zoneId());
        }
        DueWindow window = task.window();
        return "from " + Dates.day(window.opens()) + ", due " + Dates.day(window.due()) + ", late after "
                + Dates.day(window.late());
    }

    private static String nextMove(CareTask task) {
        if (TaskMove.ACCEPT.refusal(task.state).isEmpty()) {
            return "accept";
        }
        return TaskMove.START.refusal(task.state).isEmpty() ? "start" : null;
    }

    private static List<TaskView.Fact> facts(Roof roof) {
        List<TaskView.Fact> facts = new ArrayList<>();
        facts.add(new TaskView.Fact("Surface", roof.surface.word()));
        facts.add(new TaskView.Fact("Footing", roof.footing.word()));
        facts.add(new TaskView.Fact("Membrane system", membrane(roof)));
        facts.add(new TaskView.Fact("Sealant", roof.sealant == null ? "not recorded" : roof.sealant));
        facts.add(
                new TaskView.Fact("Laid on", roof.installedOn == null ? "not recorded" : Dates.day(roof.installedOn)));
        return facts;
    }

    private static String membrane(Roof roof) {
        if (roof.membraneSystem == null) {
            return "not recorded: find out before any sealant or cleaner goes on";
        }
        return roof.confirmedBy == null
                ? roof.membraneSystem + ", not confirmed"
                : roof.membraneSystem + ", confirmed by " + roof.confirmedBy + " on " + Dates.day(roof.confirmedOn);
    }

    private List<TaskView.Step> steps(CareTask task) {
        return TaskStep.of(task.id).stream()
                .map(step -> new TaskView.Step(
                        Dates.time(step.at, task.depot.zoneId()), names.of(step.who), step.state.word(), step.words))
                .toList();
    }
}
