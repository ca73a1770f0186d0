package dev.lapwing.pages;

import dev.lapwing.returns.storage.ReturnReport;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;

/** Puts what was reported of a unit into the past. */
@ApplicationScoped
public class PastFixture {
    /** Makes as if the returns of a unit had been filed at an earlier moment. */
    @Transactional
    public void markedOn(String unit, Instant at) {
        List<ReturnReport> reports = ReturnReport.list("unit.number", unit);
        reports.forEach(report -> report.filedAt = at);
    }
}
