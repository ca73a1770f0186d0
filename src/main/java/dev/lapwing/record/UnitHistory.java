package dev.lapwing.record;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.care.storage.RoofEvent;
import dev.lapwing.care.storage.TaskStep;
import dev.lapwing.fleet.Unit;
import dev.lapwing.returns.MarkedNote;
import dev.lapwing.returns.storage.AskedQuestion;
import dev.lapwing.returns.storage.ReturnReport;
import dev.lapwing.returns.storage.Strike;
import dev.lapwing.web.PersonNames;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;

/** Tells what happened to a unit's roof, from all areas, the newest first. */
@ApplicationScoped
public class UnitHistory {
    /**
     * One thing that happened.
     *
     * @param kind report, strike, hold, release, question, event, or the state of a task after a step
     * @param pieces the note of a report with its evidence, else empty
     * @param task the task it tells of, or null
     * @param steps how the task came here, else empty
     */
    public record Event(
            Instant at,
            String kind,
            String title,
            String words,
            String who,
            List<MarkedNote.Piece> pieces,
            UUID task,
            List<Step> steps) {
        static Event of(Instant at, String kind, String title, String words, String who) {
            return new Event(at, kind, title, words, who, List.of(), null, List.of());
        }
    }

    /** One step of a task. */
    public record Step(Instant at, String who, String words) {}

    @Inject
    PersonNames names;

    /** Returns the newest events of a unit, at most so many of each kind of source. */
    public List<Event> of(Unit unit, int most) {
        List<Event> events = new ArrayList<>();
        addReports(unit, most, events);
        addHolds(unit, most, events);
        addRoofEvents(unit, most, events);
        addTasks(unit, most, events);
        events.sort(Comparator.comparing(Event::at).reversed());
        return events;
    }

    private void addReports(Unit unit, int most, List<Event> events) {
        List<ReturnReport> reports = ReturnReport.find("unit.id = ?1 order by filedAt desc", unit.id)
                .range(0, most - 1)
                .list();
        for (ReturnReport report : reports) {
            String title = "Return reported, read as " + report.verdict.word();
            events.add(new Event(
                    report.filedAt,
                    "report",
                    title,
                    report.reason,
                    names.of(report.filedBy),
                    MarkedNote.of(report.note, report.evidence),
                    null,
                    List.of()));
            AskedQuestion.of(report.id)
                    .filter(question -> question.answeredAt != null)
                    .ifPresent(question -> events.add(Event.of(
                            question.answeredAt,
                            "question",
                            "Question answered: "
                                    + (question.contact ? "the roof was touched" : "nothing touched the roof"),
                            question.answeredWhy,
                            question.answeredBy)));
        }
        List<Strike> strikes = Strike.find("unit.id = ?1 order by raisedAt desc", unit.id)
                .range(0, most - 1)
                .list();
        for (Strike strike : strikes) {
            events.add(Event.of(strike.raisedAt, "strike", "Strike", strike.words, names.of(strike.raisedBy)));
        }
    }

    private void addHolds(Unit unit, int most, List<Event> events) {
        List<Hold> holds = Hold.find("unit.id = ?1 order by openedAt desc", unit.id)
                .range(0, most - 1)
                .list();
        for (Hold hold : holds) {
            events.add(Event.of(
                    hold.openedAt, "hold", "Put on hold: " + hold.cause.word(), hold.words, names.of(hold.openedBy)));
            if (hold.releasedAt != null) {
                events.add(Event.of(
                        hold.releasedAt, "release", "Hold released", hold.statement, names.of(hold.releasedBy)));
            }
        }
    }

    private void addRoofEvents(Unit unit, int most, List<Event> events) {
        for (RoofEvent event : RoofEvent.before(unit, null, most)) {
            events.add(Event.of(event.reportedAt, "event", event.kind.label(), event.note, names.of(event.reportedBy)));
        }
    }

    private void addTasks(Unit unit, int most, List<Event> events) {
        List<CareTask> tasks = CareTask.find("unit.id = ?1 order by createdAt desc", unit.id)
                .range(0, most - 1)
                .list();
        tasks.forEach(task -> addTask(task, events));
    }

    /** Tells of a task at its last step. */
    private void addTask(CareTask task, List<Event> events) {
        List<TaskStep> steps = TaskStep.of(task.id);
        if (steps.isEmpty()) {
            return;
        }
        TaskStep last = steps.get(steps.size() - 1);
        events.add(new Event(
                last.at,
                last.state.word(),
                task.kind.label() + ": " + last.state.word(),
                last.words,
                names.of(last.who),
                List.of(),
                task.id,
                steps.stream()
                        .map(step -> new Step(step.at, names.of(step.who), step.words))
                        .toList()));
    }
}
