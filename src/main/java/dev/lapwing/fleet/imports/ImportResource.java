package dev.lapwing.fleet.imports;

import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import io.smallrye.common.annotation.Blocking;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

@Path("/api/imports")
class ImportResource {
    private static final int ERRORS_SHOWN = 500;
    private static final int LONGEST_KEY = 200;
    private static final String KEY = "Idempotency-Key";

    record Taken(UUID id) {}

    @Inject
    Tables tables;

    @Inject
    TakingFiles taking;

    @Inject
    RejectedRows rejectedRows;

    @Inject
    ImportWorker worker;

    @Inject
    SecurityIdentity identity;

    @Inject
    Clock clock;

    @POST
    @Path("/{table}")
    @RolesAllowed(Roles.COORDINATOR)
    @Consumes("text/csv")
    @Blocking
    public Response csv(@RestPath String table, @HeaderParam(KEY) String key, InputStream body) throws IOException {
        java.nio.file.Path file = Files.createTempFile("lapwing-upload-", ".csv");
        try {
            Files.copy(body, file, StandardCopyOption.REPLACE_EXISTING);
            return take(table, file, key);
        } finally {
            Files.deleteIfExists(file);
        }
    }

    @POST
    @Path("/{table}")
    @RolesAllowed(Roles.COORDINATOR)
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response form(@RestPath String table, @HeaderParam(KEY) String key, @RestForm FileUpload file)
            throws IOException {
        if (file == null) {
            throw Refused.invalid("file", "is required");
        }
        return take(table, file.uploadedFile(), key);
    }

    private Response take(String table, java.nio.file.Path file, String key) throws IOException {
        var errors = new FieldErrors();
        if (key != null && errors.present(key, KEY)) {
            errors.atMost(key, LONGEST_KEY, KEY);
        }
        errors.refuseIfAny();
        String by = identity.getPrincipal().getName();
        UUID id = taking.take(tables.require(table), file, null, by, key == null ? null : key.strip());
        return Response.accepted(new Taken(id))
                .location(URI.create("/api/imports/" + id))
                .build();
    }

    @GET
    @Path("/{id}")
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public ImportAnswer one(@RestPath String id) {
        ImportRun run = ImportRun.require(Identifier.of("import", id));
        run.endIfCutOff(worker.id(), clock.instant());
        return ImportAnswer.of(run, Rejection.after(run.id, 0, ERRORS_SHOWN));
    }

    @GET
    @Path("/{id}/rejected.csv")
    @RolesAllowed(Roles.COORDINATOR)
    @Produces("text/csv")
    @Transactional
    public Response rejected(@RestPath String id) {
        ImportRun run = ImportRun.require(Identifier.of("import", id));
        char delimiter = run.delimiter;
        List<String> header = run.header;
        UUID runId = run.id;
        StreamingOutput rows = out -> rejectedRows.write(runId, header, delimiter, out);
        return CsvAnswers.file(run.kind + "-rejected.csv", rows);
    }
}
