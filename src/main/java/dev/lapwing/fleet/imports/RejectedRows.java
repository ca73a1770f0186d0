package dev.lapwing.fleet.imports;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * Writes the rows that did not go in, each with its line and its reasons in front. Put right, the file can be imported
 * again as it is: the two columns in front are no table's.
 */
@ApplicationScoped
class RejectedRows {
    private static final int PAGE = 500;

    void write(UUID runId, List<String> header, char delimiter, OutputStream out) throws IOException {
        var writer = new CsvWriter(out, delimiter);
        writer.write(join("row", "reason", header));
        int line = 0;
        List<Rejection> page = page(runId, line);
        while (!page.isEmpty()) {
            for (Rejection rejection : page) {
                writer.write(row(rejection, header.size()));
                line = rejection.line;
            }
            writer.flush();
            page = page(runId, line);
        }
        writer.flush();
    }

    private static List<Rejection> page(UUID runId, int after) {
        return QuarkusTransaction.requiringNew().call(() -> Rejection.after(runId, after, PAGE));
    }

    private static List<String> row(Rejection rejection, int width) {
        String reasons = rejection.errors.stream()
                .map(error -> error.field() + " " + error.message())
                .collect(Collectors.joining("; "));
        List<String> cells = rejection.cells.stream().map(Formulas::unguard).toList();
        List<String> filled = cells.isEmpty() ? Collections.nCopies(width, null) : cells;
        return join(String.valueOf(rejection.line), reasons, filled);
    }

    private static List<String> join(String first, String second, List<String> rest) {
        var cells = new ArrayList<String>(rest.size() + 2);
        cells.add(first);
        cells.add(second);
        cells.addAll(rest);
        return cells;
    }
}
