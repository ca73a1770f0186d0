package dev.lapwing.returns.web;

import dev.lapwing.photos.web.PhotoAnswer;
import dev.lapwing.returns.Consequences;
import dev.lapwing.returns.storage.AskedQuestion;
import dev.lapwing.returns.storage.ReturnReport;
import dev.lapwing.returns.storage.Strike;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;
import java.util.UUID;

/** Gathers a report and what followed from it. */
@ApplicationScoped
class ReportAnswers {
    @Inject
    Consequences consequences;

    ReportAnswer of(ReturnReport report) {
        ReturnReport.flush();
        Optional<Strike> strike = Strike.ofReport(report.id);
        Optional<AskedQuestion> question = AskedQuestion.of(report.id);
        Optional<UUID> cause = strike.map(found -> found.id).or(() -> question.map(asked -> asked.id));
        return new ReportAnswer(
                report.id,
                report.unit.number,
                report.returnedAt.atZone(report.unit.depot.zoneId()).toOffsetDateTime(),
                report.note,
                report.reportedBy,
                ReadingAnswer.of(report.reading()),
                strike.map(found -> new ReportAnswer.StrikeId(found.id)).orElse(null),
                cause.flatMap(consequences::holdOf).orElse(null),
                strike.flatMap(found -> consequences.workOf(found.id)).orElse(null),
                question.map(asked -> new ReportAnswer.Question(asked.id, asked.text, asked.contact, asked.answeredBy))
                        .orElse(null),
                PhotoAnswer.listOf(report.id));
    }
}
