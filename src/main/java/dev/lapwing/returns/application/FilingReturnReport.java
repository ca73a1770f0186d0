package dev.lapwing.returns.application;

import dev.lapwing.fleet.ContactDoubted;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.Ids;
import dev.lapwing.reading.ContactQuestion;
import dev.lapwing.reading.ContactReader;
import dev.lapwing.reading.ContactVerdict;
import dev.lapwing.returns.storage.AskedQuestion;
import dev.lapwing.returns.storage.ReturnReport;
import dev.lapwing.returns.storage.RoofMark;
import dev.lapwing.returns.storage.Strike;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Files what the desk says of a unit that came back: reads the note, and in the same transaction does what follows from
 * it. A contact or a mark is a strike; an open question holds the unit until it is answered.
 */
@ApplicationScoped
public class FilingReturnReport {
    @Inject
    ContactReader reader;

    @Inject
    RaisingStrikes strikes;

    @Inject
    Event<ContactDoubted> doubted;

    @Inject
    ContactQuestion questionFor;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Refuses a notice that could not be filed, with every wrong field named; files nothing. */
    @Transactional
    public void examine(ReturnNotice notice) {
        NoticeCheck.check(notice, clock.instant());
    }

    /** Files a report; refuses it whole when a field is wrong. */
    @Transactional
    public ReturnReport file(ReturnNotice notice, String by) {
        Instant now = clock.instant();
        Unit unit = NoticeCheck.check(notice, now);
        ReturnReport report = store(notice, unit, now, by);
        if (report.verdict == ContactVerdict.CONTACT) {
            strikes.raise(unit, report, Strike.Source.READING, report.returnedAt, report.note, by);
        } else if (!report.marks.isEmpty()) {
            strikes.raise(unit, report, Strike.Source.MARK, report.returnedAt, marked(report), by);
        } else if (report.verdict == ContactVerdict.UNCLEAR) {
            ask(report, now, by);
        }
        return report;
    }

    private ReturnReport store(ReturnNotice notice, Unit unit, Instant now, String by) {
        var report = new ReturnReport();
        report.id = ids.next();
        report.unit = unit;
        report.returnedAt = notice.returnedAt().toInstant();
        report.note = notice.note() == null ? "" : notice.note();
        report.language = notice.language();
        report.odometerKm = notice.odometerKm();
        report.reportedBy = notice.reportedBy();
        report.filedAt = now;
        report.filedBy = by;
        report.marks = marks(notice);
        report.setReading(reader.read(report.note, report.language, unit.heightMetres.doubleValue()));
        report.persist();
        return report;
    }

    private static List<RoofMark> marks(ReturnNotice notice) {
        List<RoofMark> marks = new ArrayList<>();
        for (var sent : Optional.ofNullable(notice.marks()).orElse(List.of())) {
            var mark = new RoofMark();
            mark.x = sent.x();
            mark.y = sent.y();
            mark.kind = sent.kind().strip();
            marks.add(mark);
        }
        return marks;
    }

    private static String marked(ReturnReport report) {
        List<String> kinds =
                report.marks.stream().map(mark -> mark.kind).distinct().toList();
        String words = "marked on the roof plan: " + String.join(", ", kinds);
        return report.note.isBlank() ? words : words + "; " + report.note;
    }

    private void ask(ReturnReport report, Instant now, String by) {
        var question = new AskedQuestion();
        question.id = ids.next();
        question.report = report;
        question.text = questionFor.about(report.reading());
        question.askedAt = now;
        question.persist();
        String words = report.note.isBlank() ? question.text : RaisingStrikes.shortened(report.note);
        doubted.fire(new ContactDoubted(question.id, report.unit.id, now, words, by));
    }
}
