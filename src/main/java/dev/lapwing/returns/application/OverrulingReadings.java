package dev.lapwing.returns.application;

import dev.lapwing.platform.Refused;
import dev.lapwing.reading.ContactVerdict;
import dev.lapwing.returns.storage.ReadingCorrection;
import dev.lapwing.returns.storage.ReturnReport;
import dev.lapwing.returns.storage.Strike;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.UUID;

/**
 * Lets a person overrule a reading that has decided. To say that there was contact after all is a strike at once. To say
 * that there was none is written down for the reader's sake, but ends no hold: only a signed inspection does.
 */
@ApplicationScoped
public class OverrulingReadings {
    @Inject
    ReadingCorrections corrections;

    @Inject
    RaisingStrikes strikes;

    @Inject
    Clock clock;

    /** Stores the correction and does what follows from it. */
    @Transactional
    public ReturnReport overrule(UUID reportId, DeskAnswer answer) {
        ReturnReport report = ReturnReport.require(reportId);
        answer.check();
        if (report.verdict == ContactVerdict.UNCLEAR) {
            throw Refused.conflict("The reading left it open; answer its question instead");
        }
        boolean readAsContact = report.verdict == ContactVerdict.CONTACT;
        if (readAsContact == answer.contact()) {
            throw Refused.conflict("The reading says so already");
        }
        Instant now = clock.instant();
        corrections.keep(report, answer, ReadingCorrection.Source.OVERRULED, now);
        if (answer.contact() && Strike.ofReport(report.id).isEmpty()) {
            String words = answer.why().strip() + "; " + report.note;
            strikes.raise(
                    report.unit,
                    report,
                    Strike.Source.PERSON,
                    report.returnedAt,
                    words,
                    answer.by().strip());
        }
        return report;
    }
}
