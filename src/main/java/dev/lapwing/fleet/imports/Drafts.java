package dev.lapwing.fleet.imports;

import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/** Files that were sent and wait for somebody to say what their columns mean. They lie on the node that took them. */
@ApplicationScoped
class Drafts {
    private static final String PREFIX = "lapwing-draft-";
    private static final String SUFFIX = ".csv";
    private static final Duration KEPT = Duration.ofHours(24);
    private static final int ROWS = 5;
    private static final Path FOLDER = Path.of(System.getProperty("java.io.tmpdir"));

    @Inject
    Tables tables;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /**
     * A file as it was sent.
     *
     * @param rows cells of its first rows
     */
    record Draft(UUID id, CsvTable table, Path file, List<String> headings, List<List<String>> rows) {}

    /** Keeps a file that has a header, and returns its draft; refuses one that no row could be read from. */
    UUID keep(String tableName, Path sent) throws IOException {
        forgetOld();
        CsvTable table = tables.require(tableName);
        UUID id = ids.next();
        read(id, table, sent);
        Files.copy(sent, path(id, table), StandardCopyOption.REPLACE_EXISTING);
        return id;
    }

    Draft require(UUID id) throws IOException {
        for (CsvTable table : tables.all()) {
            Path file = path(id, table);
            if (Files.exists(file)) {
                return read(id, table, file);
            }
        }
        throw Refused.notFound("file with this address any more: it was imported, or is older than a day");
    }

    private static Draft read(UUID id, CsvTable table, Path file) throws IOException {
        var errors = new FieldErrors();
        try (InputStream bytes = Files.newInputStream(file);
                CsvSource source = CsvSource.open(bytes, table, null, errors)) {
            List<List<String>> rows = new ArrayList<>();
            boolean readable =
                    errors.list().stream().noneMatch(error -> error.field().equals(CsvSource.FILE));
            if (!readable) {
                throw Refused.invalid(errors.list().stream()
                        .filter(error -> error.field().equals(CsvSource.FILE))
                        .toList());
            }
            CsvRow row = source.next();
            while (row != null && rows.size() < ROWS) {
                rows.add(row.cells());
                row = source.next();
            }
            return new Draft(id, table, file, source.header().names(), rows);
        }
    }

    private static Path path(UUID id, CsvTable table) {
        return FOLDER.resolve(PREFIX + id + "-" + table.name() + SUFFIX);
    }

    private void forgetOld() throws IOException {
        Instant oldest = clock.instant().minus(KEPT);
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.filter(Drafts::isDraft).toList()) {
                if (Files.getLastModifiedTime(file).toInstant().isBefore(oldest)) {
                    Files.deleteIfExists(file);
                }
            }
        }
    }

    private static boolean isDraft(Path file) {
        String name = file.getFileName().toString();
        return name.startsWith(PREFIX) && name.endsWith(SUFFIX);
    }
}
