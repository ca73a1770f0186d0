package dev.lapwing.returns.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.reading.ContactReader;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Roles;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;

/** Reads notes without filing anything. */
@Path("/api/contact-readings")
class ContactReadingResource {
    private static final int LONGEST_NOTE = 200_000;

    /** A note to be read; the language may be left out. */
    record NoteToRead(String note, String language, Double travelHeightMetres) {}

    @Inject
    ContactReader reader;

    @Inject
    ObjectMapper json;

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    ReadingAnswer read(NoteToRead request) {
        return answer(Bodies.require(request));
    }

    private ReadingAnswer answer(NoteToRead request) {
        var errors = new FieldErrors();
        errors.check(request.note() != null, "note", "is required");
        errors.atMost(request.note(), LONGEST_NOTE, "note");
        errors.refuseIfAny();
        return ReadingAnswer.of(reader.read(request.note(), request.language(), request.travelHeightMetres()));
    }
}
