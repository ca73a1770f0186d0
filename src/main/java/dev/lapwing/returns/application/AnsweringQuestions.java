package dev.lapwing.returns.application;

import dev.lapwing.fleet.DoubtSettled;
import dev.lapwing.platform.Refused;
import dev.lapwing.returns.storage.AskedQuestion;
import dev.lapwing.returns.storage.ReadingCorrection;
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
    @Inject
    RaisingStrikes strikes;

    @Inject
    ReadingCorrections corrections;

    @Inject
    Event<DoubtSettled> settled;

    @Inject
    Clock clock;

    /** Stores the answer; contact becomes a strike, and the question's hold ends. */
    @Transactional
    public ReturnReport answer(UUID reportId, DeskAnswer answer) {
        ReturnReport report = ReturnReport.require(reportId);
        answer.check();
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
        corrections.keep(report, answer, ReadingCorrection.Source.ANSWER, now);
        if (answer.contact()) {
            String words = question.answeredWhy + "; " + report.note;
            strikes.raise(report.unit, report, Strike.Source.ANSWER, report.returnedAt, words, question.answeredBy);
        }
        settled.fire(new DoubtSettled(question.id, answer.contact(), now, question.answeredBy, question.answeredWhy));
        return report;
    }
}
