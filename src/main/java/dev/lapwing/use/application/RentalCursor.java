package dev.lapwing.use.application;

import dev.lapwing.use.storage.Rental;
import java.time.Instant;
import java.util.UUID;

/** Writes the place of a rental in the export as a cursor and reads it again. */
final class RentalCursor {
    private RentalCursor() {}

    static String write(Rental rental) {
        return rental.outAt + " " + rental.id;
    }

    /** Returns the place; null is the one before the first rental. */
    static Rental.Place read(String cursor) {
        if (cursor == null) {
            return new Rental.Place(Instant.EPOCH, new UUID(0, 0));
        }
        String[] parts = cursor.split(" ", 2);
        return new Rental.Place(Instant.parse(parts[0]), UUID.fromString(parts[1]));
    }
}
