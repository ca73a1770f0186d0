package dev.lapwing.fleet.imports;

import dev.lapwing.platform.Refused;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** One import of a file, and how far it is. */
@Entity
@Table(name = "import_run")
class ImportRun extends PanacheEntityBase {
    private static final Duration QUIET = Duration.ofSeconds(30);
    private static final String INTERRUPTED = "interrupted: the service stopped before the end of the file;"
            + " import it again, rows that are in will only be updated";

    @Id
    UUID id;

    String kind;

    @Enumerated(EnumType.STRING)
    ImportState state;

    @Column(name = "asked_by")
    String askedBy;

    @Column(name = "asked_at")
    Instant askedAt;

    @Column(name = "finished_at")
    Instant finishedAt;

    UUID worker;

    @Column(name = "touched_at")
    Instant touchedAt;

    char delimiter;

    /** Names of the columns as they stand in the file. */
    @Convert(converter = TextsColumn.class)
    List<String> header;

    @Convert(converter = TextsColumn.class)
    @Column(name = "ignored_columns")
    List<String> ignoredColumns;

    @Column(name = "file_bytes")
    long fileBytes;

    @Column(name = "read_bytes")
    long readBytes;

    @Column(name = "row_count")
    int rowCount;

    int accepted;
    int rejected;

    /** Why it failed, or null. */
    String problem;

    /** Returns the latest runs, newest first. */
    static List<ImportRun> latest(int limit) {
        return find("order by askedAt desc, id").range(0, limit - 1).list();
    }

    static ImportRun require(UUID id) {
        ImportRun run = findById(id);
        if (run == null) {
            throw Refused.notFound("import " + id);
        }
        return run;
    }

    /** Ends a run whose process is gone: not this one, and without a sign of life for a while. */
    void endIfCutOff(UUID thisProcess, Instant now) {
        boolean quiet = touchedAt.isBefore(now.minus(QUIET)) || touchedAt.isAfter(now);
        if (state == ImportState.RUNNING && !worker.equals(thisProcess) && quiet) {
            end(ImportState.FAILED, INTERRUPTED, now);
        }
    }

    void interrupt(Instant now) {
        end(ImportState.FAILED, INTERRUPTED, now);
    }

    void end(ImportState how, String why, Instant now) {
        state = how;
        problem = why;
        finishedAt = now;
    }
}
