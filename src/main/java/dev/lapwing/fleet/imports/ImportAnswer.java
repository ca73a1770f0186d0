package dev.lapwing.fleet.imports;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;

/**
 * An import as it is answered.
 *
 * @param rows how many rows were read so far
 * @param progress how much of the file was read, 0 to 1
 * @param ignoredColumns columns of the file that the table does not know
 * @param errors what is wrong with the first rejected rows; the list of all is at {@code rejected.csv}
 * @param problem why it failed, or null
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record ImportAnswer(
        UUID id,
        String kind,
        ImportState state,
        int rows,
        int accepted,
        int rejected,
        double progress,
        List<String> ignoredColumns,
        List<RowError> errors,
        String problem,
        OffsetDateTime askedAt,
        OffsetDateTime finishedAt) {

    /** What is wrong with a cell, with the line on which its row begins. */
    record RowError(int row, String field, String message, String value) {}

    static ImportAnswer of(ImportRun run, List<Rejection> rejections) {
        List<RowError> errors = rejections.stream()
                .flatMap(rejection -> rejection.errors.stream()
                        .map(error -> new RowError(rejection.line, error.field(), error.message(), error.value())))
                .toList();
        return new ImportAnswer(
                run.id,
                run.kind,
                run.state,
                run.rowCount,
                run.accepted,
                run.rejected,
                run.fileBytes == 0 ? 1 : (double) run.readBytes / run.fileBytes,
                run.ignoredColumns,
                errors,
                run.problem,
                run.askedAt.atOffset(ZoneOffset.UTC),
                run.finishedAt == null ? null : run.finishedAt.atOffset(ZoneOffset.UTC));
    }
}
