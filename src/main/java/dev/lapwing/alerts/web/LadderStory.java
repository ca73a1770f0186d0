package dev.lapwing.alerts.web;

import dev.lapwing.alerts.application.LadderView;
import dev.lapwing.alerts.domain.Climb;
import dev.lapwing.alerts.domain.Ladder;
import dev.lapwing.alerts.storage.LadderStep;
import dev.lapwing.care.TaskStory;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.web.Dates;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.ZoneId;
import java.util.Optional;
import java.util.stream.Stream;

/** Shows the ladder of a strike on the page of its inspection. */
@ApplicationScoped
class LadderStory implements TaskStory {
    @Inject
    LadderView ladder;

    @Override
    public Optional<Story> of(CareTask task) {
        if (task.kind != TaskKind.STRIKE_INSPECTION) {
            return Optional.empty();
        }
        LadderView.State state = ladder.of(task);
        ZoneId zone = task.depot.zoneId();
        return Optional.of(new Story(
                "Who was called",
                state.climb()
                        .map(climb -> lead(climb))
                        .orElse("Nobody more is called: someone is at it, or it is over."),
                Stream.concat(
                                state.taken().stream().map(step -> taken(step, zone)),
                                state.ahead().stream().map(step -> ahead(step, zone)))
                        .toList()));
    }

    private static String lead(Climb climb) {
        return switch (climb.reason()) {
            case NOT_ACCEPTED -> "More people are called until a tech accepts.";
            case NOT_STARTED -> "More people are called if the work does not start.";
        };
    }

    private static Line taken(LadderStep step, ZoneId zone) {
        String told = step.told.isEmpty() ? "nobody to call" : step.told;
        String again = step.turn == 0 ? "" : ", again";
        return new Line(
                Dates.time(step.takenAt, zone),
                step.rung.word() + again + ": " + told + " (" + step.reason.word() + ")",
                false);
    }

    private static Line ahead(Ladder.Step step, ZoneId zone) {
        String again = step.turn() == 0 ? "" : ", again";
        return new Line("at " + Dates.time(step.at(), zone), step.rung().word() + again, true);
    }
}
