package dev.lapwing.fleet.imports;

import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import io.quarkus.runtime.ShutdownEvent;
import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.TransactionPhase;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;

/** Works through the files that were taken in, one after the other, a batch of rows at a time. */
@ApplicationScoped
class ImportWorker {
    private static final Logger LOG = Logger.getLogger(ImportWorker.class);
    private static final int BATCH = 500;
    private static final int SECONDS_TO_STOP = 5;

    @Inject
    Tables tables;

    @Inject
    StoringRows storing;

    @Inject
    Event<TableImported> imported;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    private final ExecutorService executor = Executors.newSingleThreadExecutor(work -> new Thread(work, "import"));

    private UUID id;

    @PostConstruct
    void named() {
        id = ids.next();
    }

    /** Returns what this process is known by. */
    UUID id() {
        return id;
    }

    void fileTaken(@Observes(during = TransactionPhase.AFTER_SUCCESS) FileTaken taken) {
        try {
            Path own = taken.file().resolveSibling("lapwing-import-" + taken.runId() + ".csv");
            Files.move(taken.file(), own);
            executor.execute(() -> run(taken, own));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void run(FileTaken taken, Path file) {
        CsvTable table = tables.require(taken.table());
        try (InputStream bytes = Files.newInputStream(file);
                CsvSource source = CsvSource.open(bytes, table, taken.header(), new FieldErrors())) {
            List<CsvRow> batch = batch(source);
            while (!batch.isEmpty() && !Thread.currentThread().isInterrupted()) {
                storing.store(taken.runId(), table, batch, source.bytesRead(), taken.by());
                batch = batch(source);
            }
            finish(taken, batch.isEmpty());
        } catch (IOException | RuntimeException failure) {
            LOG.errorf(failure, "Import %s failed", taken.runId());
            storing.fail(taken.runId(), "stopped by a fault of the service, which was logged");
        } finally {
            delete(file);
        }
    }

    private void finish(FileTaken taken, boolean toTheEnd) {
        if (toTheEnd) {
            int accepted = storing.finish(taken.runId());
            imported.fire(new TableImported(taken.table(), accepted, clock.instant(), taken.by()));
        } else {
            storing.interrupt(taken.runId());
        }
    }

    private static List<CsvRow> batch(CsvSource source) throws IOException {
        var batch = new ArrayList<CsvRow>(BATCH);
        CsvRow row = source.next();
        while (row != null) {
            batch.add(row);
            row = batch.size() < BATCH ? source.next() : null;
        }
        return batch;
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            LOG.warnf(e, "%s is left behind", file);
        }
    }

    void stopping(@Observes ShutdownEvent stop) throws InterruptedException {
        executor.shutdownNow();
        if (!executor.awaitTermination(SECONDS_TO_STOP, TimeUnit.SECONDS)) {
            LOG.warn("An import is still at work while the service stops; it will be shown as interrupted");
        }
    }
}
