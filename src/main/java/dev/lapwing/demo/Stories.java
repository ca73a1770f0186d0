package dev.lapwing.demo;

import dev.lapwing.care.domain.DueWindow;
import dev.lapwing.care.domain.HoldCause;
import dev.lapwing.care.domain.HoldState;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.reading.ContactQuestion;
import dev.lapwing.reading.ContactReader;
import dev.lapwing.reading.ContactVerdict;
import dev.lapwing.returns.storage.AskedQuestion;
import dev.lapwing.returns.storage.ReturnReport;
import dev.lapwing.returns.storage.Strike;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/** Writes what was reported of units of the demo that came back, and what it led to. */
@ApplicationScoped
class Stories {
    private static final String DESK = "desk";
    private static final Duration TO_FILE = Duration.ofMinutes(6);
    private static final Duration TO_INSPECT = Duration.ofHours(3);
    private static final Duration TO_RELEASE = Duration.ofHours(4);
    private static final int FOLLOW_UP_DAYS = 14;
    private static final int FOLLOW_UP_DONE = 11;

    @Inject
    ContactReader reader;

    @Inject
    ContactQuestion questionFor;

    void write(DemoUnit unit, DemoFiles.Row story, Instant returnedAt) {
        ReturnReport report = report(unit, story, returnedAt);
        switch (story.text("tells")) {
            case "strike" -> strike(unit, story, report);
            case "question" -> question(unit, report);
            default -> {
                // A report that tells of nothing leads to nothing.
            }
        }
    }

    private ReturnReport report(DemoUnit unit, DemoFiles.Row story, Instant returnedAt) {
        var report = new ReturnReport();
        report.id = DemoIds.of(unit.unit().number, "report", story.number("daysAgo"));
        report.unit = unit.unit();
        report.returnedAt = returnedAt;
        report.note = story.text("note");
        report.language = story.text("language");
        report.reportedBy = story.text("reportedBy");
        report.filedAt = returnedAt.plus(TO_FILE);
        report.filedBy = DESK;
        report.setReading(reader.read(
                report.note, report.language, unit.unit().heightMetres.doubleValue()));
        report.persist();
        return report;
    }

    private void question(DemoUnit unit, ReturnReport report) {
        var question = new AskedQuestion();
        question.id = DemoIds.of(report.id, "question");
        question.report = report;
        question.text = questionFor.about(report.reading());
        question.askedAt = report.filedAt;
        question.persist();
        hold(unit, HoldCause.QUESTION, question.id, report).persist();
    }

    private void strike(DemoUnit unit, DemoFiles.Row story, ReturnReport report) {
        var strike = new Strike();
        strike.id = DemoIds.of(report.id, "strike");
        strike.unit = unit.unit();
        strike.report = report;
        strike.source = report.verdict == ContactVerdict.CONTACT ? Strike.Source.READING : Strike.Source.PERSON;
        strike.seenAt = report.returnedAt;
        strike.words = report.note;
        strike.raisedBy = DESK;
        strike.raisedAt = report.filedAt;
        strike.persistAndFlush();
        Hold hold = hold(unit, HoldCause.STRIKE, strike.id, report);
        DemoTask inspection = inspection(unit, report, strike.id);
        String statement = story.text("statement");
        if (statement == null) {
            inspection.to(TaskState.ASSIGNED, unit.tech(0)).store();
        } else {
            Instant inspected = report.filedAt.plus(TO_INSPECT);
            inspection.done(unit.tech(0), inspected, "Signed off: " + statement);
            hold.release(DemoTask.COORDINATOR, statement, report.filedAt.plus(TO_RELEASE));
        }
        hold.persist();
        story.constant(TaskKind.class, "followUp").ifPresent(kind -> followUp(unit, kind, report));
    }

    private static DemoTask inspection(DemoUnit unit, ReturnReport report, UUID strikeId) {
        LocalDate day = unit.unit().depot.dateAt(report.filedAt);
        String why = "strike inspection: " + report.note + "; due at once, before the next rain";
        var window = new DueWindow(day, day, day);
        return new DemoTask(
                        unit,
                        "strike " + strikeId,
                        TaskKind.STRIKE_INSPECTION,
                        TaskOrigin.STRIKE,
                        window,
                        report.filedAt,
                        why)
                .answering(strikeId, report.filedAt);
    }

    private static void followUp(DemoUnit unit, TaskKind kind, ReturnReport report) {
        LocalDate day = unit.unit().depot.dateAt(report.filedAt);
        var window = new DueWindow(day, day.plusDays(FOLLOW_UP_DAYS), day.plusDays(2 * FOLLOW_UP_DAYS));
        Instant made = report.filedAt.plus(TO_INSPECT);
        String why = kind.label() + ": found at the strike inspection of " + day;
        var task = new DemoTask(unit, "follow-up " + report.id, kind, TaskOrigin.FOLLOW_UP, window, made, why);
        Instant signed = made.plus(Duration.ofDays(FOLLOW_UP_DONE));
        boolean recent = window.due().isAfter(unit.today());
        if (recent) {
            task.store();
        } else {
            task.done(unit.tech(1), signed, "Signed off: done and dry");
        }
    }

    private static Hold hold(DemoUnit unit, HoldCause cause, UUID causeId, ReturnReport report) {
        var hold = new Hold();
        hold.id = DemoIds.of(causeId, "hold");
        hold.unit = unit.unit();
        hold.cause = cause;
        hold.causeId = causeId;
        hold.words = report.note;
        hold.state = HoldState.OPEN;
        hold.openedAt = report.filedAt;
        hold.openedBy = DESK;
        return hold;
    }
}
