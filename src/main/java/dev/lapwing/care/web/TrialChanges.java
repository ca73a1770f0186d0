package dev.lapwing.care.web;

import dev.lapwing.care.storage.TrialChange;
import dev.lapwing.fleet.imports.CsvAnswers;
import dev.lapwing.fleet.imports.CsvWriter;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

/** Writes what a trial lists as a CSV file, while it is sent. */
final class TrialChanges {
    private static final int PAGE = 500;
    private static final List<String> HEADER =
            List.of("unit", "depot", "dueNow", "dueTried", "tasksCreated", "tasksCalledOff", "why");

    private TrialChanges() {}

    static Response file(UUID trial) {
        return CsvAnswers.file("rule-trial.csv", out -> write(trial, out));
    }

    private static void write(UUID trial, OutputStream out) throws IOException {
        var writer = new CsvWriter(out, ',');
        writer.write(HEADER);
        int last = 0;
        List<TrialChange> page;
        do {
            int from = last;
            page = QuarkusTransaction.requiringNew().call(() -> TrialChange.after(trial, from, PAGE));
            for (TrialChange change : page) {
                writer.write(cells(change));
                last = change.position;
            }
            writer.flush();
        } while (page.size() == PAGE);
    }

    private static List<String> cells(TrialChange change) {
        return Arrays.asList(
                change.unit,
                change.depot,
                Objects.toString(change.dueNow, null),
                Objects.toString(change.dueTried, null),
                String.valueOf(change.created),
                String.valueOf(change.calledOff),
                change.why);
    }
}
