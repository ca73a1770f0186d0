package dev.lapwing.web;

import jakarta.ws.rs.core.Response;

/** Phrases of HTTP statuses. */
final class Statuses {
    private Statuses() {}

    static String phrase(int status) {
        Response.Status known = Response.Status.fromStatusCode(status);
        if (known != null) {
            return known.getReasonPhrase();
        }
        return status == 422 ? "Unprocessable Content" : "Status " + status;
    }
}
