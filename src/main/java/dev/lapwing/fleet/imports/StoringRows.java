package dev.lapwing.fleet.imports;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jboss.logging.Logger;

/** Stores a batch of rows together with how far the run is, so that the count is true whatever happens. */
@ApplicationScoped
class StoringRows {
    private static final Logger LOG = Logger.getLogger(StoringRows.class);

    @Inject
    EntityManager database;

    @Inject
    Clock clock;

    /** Stores the good rows and writes down the others. When the batch fails as one, its rows go in one by one. */
    void store(UUID runId, CsvTable table, List<CsvRow> rows, long bytesRead, String by) {
        List<CsvRow> readable = rows.stream().filter(CsvRow::good).toList();
        try {
            QuarkusTransaction.requiringNew().run(() -> storeAndCount(runId, table, readable, rows, bytesRead, by));
        } catch (RuntimeException failure) {
            LOG.debugf(failure, "A batch of import %s goes in row by row", runId);
            readable.forEach(CsvRow::forgetErrors);
            readable.forEach(row -> storeAlone(table, row, by));
            QuarkusTransaction.requiringNew().run(() -> count(runId, rows, bytesRead));
        }
    }

    private void storeAndCount(
            UUID runId, CsvTable table, List<CsvRow> readable, List<CsvRow> all, long bytesRead, String by) {
        table.store(readable, clock.instant(), by);
        database.flush();
        count(runId, all, bytesRead);
    }

    private void storeAlone(CsvTable table, CsvRow row, String by) {
        try {
            QuarkusTransaction.requiringNew().run(() -> {
                table.store(List.of(row), clock.instant(), by);
                database.flush();
            });
        } catch (RuntimeException failure) {
            LOG.warnf(failure, "The row of line %d could not be stored", row.line());
            row.rejectWhole("could not be stored");
        }
    }

    private void count(UUID runId, List<CsvRow> rows, long bytesRead) {
        ImportRun run = ImportRun.require(runId);
        for (CsvRow row : rows) {
            if (row.good()) {
                run.accepted++;
            } else {
                run.rejected++;
                Rejection.of(runId, row).persist();
            }
        }
        run.rowCount += rows.size();
        run.readBytes = bytesRead;
        run.touchedAt = clock.instant();
    }

    /** Ends a run well and returns how many rows went in. */
    int finish(UUID runId) {
        return QuarkusTransaction.requiringNew().call(() -> {
            ImportRun run = ImportRun.require(runId);
            run.readBytes = run.fileBytes;
            run.end(ImportState.DONE, null, clock.instant());
            return run.accepted;
        });
    }

    void fail(UUID runId, String why) {
        Instant now = clock.instant();
        QuarkusTransaction.requiringNew().run(() -> ImportRun.require(runId).end(ImportState.FAILED, why, now));
    }

    void interrupt(UUID runId) {
        Instant now = clock.instant();
        QuarkusTransaction.requiringNew().run(() -> ImportRun.require(runId).interrupt(now));
    }
}
