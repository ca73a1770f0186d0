package dev.lapwing.returns.application;

import dev.lapwing.fleet.DoubtSettled;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import dev.lapwing.returns.storage.AskedQuestion;
import dev.lapwing.returns.storage.ReturnReport;
import dev.lapwing.returns.storage.Strike;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.UUID;

/** Settles an unclear reading by the desk's answer. */
@ApplicationScoped
public class AnsweringQuestions {
    /** What the desk answers: whether there was contact, who says so, and what that rests on. */
    public record Answer(Boolean contact, String by, String why) {}

    @Inject
    RaisingStrikes strikes;

    @Inject
    Event<DoubtSettled> settled;

    @Inject
    Clock clock;

    /** Stores the answer; contact becomes a strike, and the question's hold ends. */
    @Transactional
    public ReturnReport answer(UUID reportId, Answer answer) {
        ReturnReport report = ReturnReport.require(reportId);
        check(answer);
        AskedQuestion question =
                AskedQuestion.of(reportId).orElseThrow(() -> Refused.conflict("Nothing was asked about this report"));
        if (question.contact != null) {
            throw Refused.conflict("The question was answered by " + question.answeredBy);
        }
        Instant now = clock.instant();
        question.contact = answer.contact();
        question.answeredBy = answer.by().strip();
        question.answeredWhy = answer.why().strip();
        question.answeredAt = now;
        if (answer.contact()) {
            String words = question.answeredWhy + "; " + report.note;
            strikes.raise(report.unit, report, Strike.Source.ANSWER, report.returnedAt, words, question.answeredBy);
        }
        settled.fire(new DoubtSettled(question.id, answer.contact(), now, question.answeredBy, question.answeredWhy));
        return report;
    }

    private static void check(Answer answer) {
        var errors = new FieldErrors();
        errors.present(answer.contact(), "contact");
        if (errors.present(answer.by(), "by")) {
            errors.atMost(answer.by(), 100, "by");
        }
        if (errors.present(answer.why(), "why")) {
            errors.atMost(answer.why(), 2000, "why");
        }
        errors.refuseIfAny();
    }
}
