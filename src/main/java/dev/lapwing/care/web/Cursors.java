package dev.lapwing.care.web;

import dev.lapwing.care.storage.DueList;
import dev.lapwing.platform.FieldErrors;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Base64;
import java.util.UUID;

/** Writes a place in the due list as a cursor and reads it again. */
final class Cursors {
    private Cursors() {}

    static String write(DueList.Place place) {
        String plain = place.rank() + "|" + place.dueAt() + "|" + place.id();
        return Base64.getUrlEncoder().withoutPadding().encodeToString(plain.getBytes(StandardCharsets.UTF_8));
    }

    /** Reads a cursor; null is the start, a wrong one is noted. */
    static DueList.Place read(String cursor, FieldErrors errors) {
        if (cursor == null || cursor.isBlank()) {
            return DueList.Place.START;
        }
        try {
            String[] parts = new String(Base64.getUrlDecoder().decode(cursor), StandardCharsets.UTF_8).split("\\|", 3);
            return new DueList.Place(Integer.parseInt(parts[0]), Instant.parse(parts[1]), UUID.fromString(parts[2]));
        } catch (IllegalArgumentException | DateTimeException | ArrayIndexOutOfBoundsException wrong) {
            errors.check(false, "after", "is not a cursor of this list");
            return DueList.Place.START;
        }
    }
}
