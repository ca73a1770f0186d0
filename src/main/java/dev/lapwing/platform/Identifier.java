package dev.lapwing.platform;

import java.util.UUID;

/** Reads ids from paths. */
public final class Identifier {
    private Identifier() {}

    /** Returns the id, or refuses with "there is no {@code what} ..." when it is none. */
    public static UUID of(String what, String id) {
        try {
            return UUID.fromString(id);
        } catch (IllegalArgumentException notAnId) {
            throw Refused.notFound(what + " " + id);
        }
    }
}
