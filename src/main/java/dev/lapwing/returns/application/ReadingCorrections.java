package dev.lapwing.returns.application;

import dev.lapwing.platform.Ids;
import dev.lapwing.returns.storage.ReadingCorrection;
import dev.lapwing.returns.storage.ReturnReport;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;

/** Keeps what people say about readings, so that the reader can be judged and taught by it. */
@ApplicationScoped
class ReadingCorrections {
    @Inject
    Ids ids;

    ReadingCorrection keep(ReturnReport report, DeskAnswer answer, ReadingCorrection.Source source, Instant now) {
        var correction = new ReadingCorrection();
        correction.id = ids.next();
        correction.report = report;
        correction.contact = answer.contact();
        correction.source = source;
        correction.saidBy = answer.by().strip();
        correction.why = answer.why().strip();
        correction.saidAt = now;
        correction.persist();
        return correction;
    }
}
