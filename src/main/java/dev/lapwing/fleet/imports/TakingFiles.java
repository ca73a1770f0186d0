package dev.lapwing.fleet.imports;

import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Secrets;
import dev.lapwing.web.Repeats;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** Takes a file in: looks at its header, writes down that it is to be imported, and has that begin after the commit. */
@ApplicationScoped
class TakingFiles {
    @Inject
    ImportWorker worker;

    @Inject
    Repeats repeats;

    @Inject
    Event<FileTaken> taken;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /**
     * Takes a file for a table and returns the id of its run; refuses a file that no row could be read from.
     *
     * @param renamed names to read the header under, in the order of the file; null as it stands
     * @param file the file; whoever calls deletes it afterwards, if it is still there
     * @param key key of a request that may come twice, or null
     */
    UUID take(CsvTable table, Path file, List<String> renamed, String by, String key) throws IOException {
        CsvHeader header = header(table, file, renamed);
        long size = Files.size(file);
        String fingerprint = key == null ? null : Secrets.hash(table.name() + renamed + FileHash.of(file));
        return QuarkusTransaction.joiningExisting()
                .call(() -> key == null
                        ? begin(table, file, header, size, by)
                        : UUID.fromString(repeats.once(by, key, fingerprint, () -> {
                                    UUID id = begin(table, file, header, size, by);
                                    return new Repeats.Kept(202, id.toString());
                                })
                                .body()));
    }

    private static CsvHeader header(CsvTable table, Path file, List<String> renamed) throws IOException {
        var errors = new FieldErrors();
        try (InputStream bytes = Files.newInputStream(file);
                CsvSource source = CsvSource.open(bytes, table, renamed, errors)) {
            errors.refuseIfAny();
            return source.header();
        }
    }

    private UUID begin(CsvTable table, Path file, CsvHeader header, long size, String by) {
        Instant now = clock.instant();
        var run = new ImportRun();
        run.id = ids.next();
        run.kind = table.name();
        run.state = ImportState.RUNNING;
        run.askedBy = by;
        run.askedAt = now;
        run.worker = worker.id();
        run.touchedAt = now;
        run.delimiter = header.delimiter();
        run.header = header.names();
        run.ignoredColumns = header.ignored();
        run.fileBytes = size;
        run.persistAndFlush();
        taken.fire(new FileTaken(run.id, table.name(), file, header.names(), by));
        return run.id;
    }
}
