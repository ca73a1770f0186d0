package dev.lapwing.returns.web;

import dev.lapwing.returns.Consequences;
import dev.lapwing.returns.MarkedNote;
import dev.lapwing.returns.RoofPlace;
import dev.lapwing.returns.storage.ReturnReport;
import dev.lapwing.web.Dates;
import dev.lapwing.web.PersonNames;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.UUID;

/** Gathers what the page of a report shows. */
@ApplicationScoped
class ReportViews {
    @Inject
    ReportAnswers answers;

    @Inject
    PersonNames names;

    @Transactional
    ReportView of(UUID id) {
        ReturnReport report = ReturnReport.require(id);
        ReportAnswer answer = answers.of(report);
        Consequences.Work work = answer.task();
        ReportAnswer.Question question = answer.question();
        return new ReportView(
                report.id,
                report.unit.number,
                report.unit.depot.name,
                Dates.time(report.returnedAt, report.unit.depot.zoneId()),
                report.reportedBy,
                report.note,
                answer.reading(),
                MarkedNote.of(report.note, report.evidence),
                report.marks.stream()
                        .map(mark -> new ReportView.ShownMark(
                                RoofPlace.at(mark.x, mark.y).word(), mark.kind, mark.x, mark.y))
                        .toList(),
                answer.strike() != null,
                work == null ? null : work.id(),
                work == null ? null : names.of(work.assignee()),
                question == null ? null : question.text(),
                question == null ? null : question.contact(),
                question == null ? null : question.answeredBy());
    }
}
