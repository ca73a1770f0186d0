package dev.lapwing.web;

import dev.lapwing.platform.Refused;

/** Guards request bodies. */
public final class Bodies {
    private Bodies() {}

    /** Returns the body, or refuses the request when there is none. */
    public static <T> T require(T body) {
        if (body == null) {
            throw Refused.invalid("body", "is required");
        }
        return body;
    }
}
