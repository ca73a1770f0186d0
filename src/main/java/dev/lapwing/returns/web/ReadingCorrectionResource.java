package dev.lapwing.returns.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.platform.Identifier;
import dev.lapwing.returns.storage.ReadingCorrection;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestQuery;

/** What people said about readings: to look through, and to take along as labelled notes. */
@Path("/api/reading-corrections")
class ReadingCorrectionResource {
    private static final int BATCH = 500;

    /** A correction beside what the reading said. */
    record CorrectionAnswer(
            UUID id,
            UUID report,
            String unit,
            String note,
            String read,
            boolean contact,
            String source,
            String by,
            String why,
            OffsetDateTime at) {

        static CorrectionAnswer of(ReadingCorrection correction) {
            var report = correction.report;
            return new CorrectionAnswer(
                    correction.id,
                    report.id,
                    report.unit.number,
                    report.note,
                    report.verdict.word(),
                    correction.contact,
                    LabelledNote.of(correction).kind(),
                    correction.saidBy,
                    correction.why,
                    correction.saidAt.atZone(report.unit.depot.zoneId()).toOffsetDateTime());
        }
    }

    @Inject
    ObjectMapper json;

    @GET
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public Page<CorrectionAnswer> list(@RestQuery Integer limit, @RestQuery String after) {
        return page(after, Page.limit(limit));
    }

    /** Returns a page of corrections, latest first, that follows the one with this id; null starts at the latest. */
    static Page<CorrectionAnswer> page(String after, int size) {
        UUID last = after == null ? null : Identifier.of("correction", after);
        return Page.of(
                        ReadingCorrection.after(last, size + 1),
                        size,
                        ReadingCorrection.count(),
                        correction -> correction.id.toString())
                .map(CorrectionAnswer::of);
    }

    @GET
    @Path("/labelled-notes")
    @Produces("application/x-ndjson")
    @RolesAllowed(Roles.COORDINATOR)
    public Response labelledNotes() {
        StreamingOutput notes = out -> write(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        return Response.ok(notes)
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"labelled-notes.jsonl\"")
                .build();
    }

    private void write(Writer out) throws IOException {
        var lines = new BufferedWriter(out);
        UUID last = null;
        List<ReadingCorrection> batch;
        do {
            UUID after = last;
            batch = QuarkusTransaction.requiringNew().call(() -> ReadingCorrection.after(after, BATCH));
            for (ReadingCorrection correction : batch) {
                lines.write(json.writeValueAsString(LabelledNote.of(correction)));
                lines.write('\n');
                last = correction.id;
            }
        } while (batch.size() == BATCH);
        lines.flush();
    }
}
