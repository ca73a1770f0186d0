package dev.lapwing.returns.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.reading.ContactReader;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Roles;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;

/** Reads notes without filing anything. */
@Path("/api/contact-readings")
class ContactReadingResource {
    private static final String NDJSON = "application/x-ndjson";
    private static final int LONGEST_NOTE = 200_000;

    /** A note to be read; the language may be left out. */
    record NoteToRead(String note, String language, Double travelHeightMetres) {}

    @Inject
    ContactReader reader;

    @Inject
    ObjectMapper json;

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    public ReadingAnswer read(NoteToRead request) {
        return answer(Bodies.require(request));
    }

    @POST
    @Path("/batch")
    @Consumes({NDJSON, MediaType.WILDCARD})
    @Produces(NDJSON)
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    public StreamingOutput batch(InputStream notes) {
        var batch = new BatchReading(json, this::answer);
        return out -> batch.run(
                new InputStreamReader(notes, StandardCharsets.UTF_8),
                new OutputStreamWriter(out, StandardCharsets.UTF_8));
    }

    private ReadingAnswer answer(NoteToRead request) {
        var errors = new FieldErrors();
        errors.check(request.note() != null, "note", "is required");
        errors.atMost(request.note(), LONGEST_NOTE, "note");
        errors.refuseIfAny();
        return ReadingAnswer.of(reader.read(request.note(), request.language(), request.travelHeightMetres()));
    }
}
