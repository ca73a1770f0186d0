package dev.lapwing.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.platform.FieldError;
import java.util.List;

/**
 * A problem answer as RFC 9457 describes it, with the wrong fields named.
 *
 * @param type always {@code about:blank}: the status says what kind of problem it is
 * @param title the standard phrase of the status
 * @param status the HTTP status
 * @param detail what happened, in words for the caller
 * @param errors the wrong fields, empty when no field is to blame
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Problem(String type, String title, int status, String detail, List<FieldError> errors) {
    /** The media type of problem answers. */
    public static final String MEDIA_TYPE = "application/problem+json";

    static Problem of(int status, String detail, List<FieldError> errors) {
        return new Problem("about:blank", Statuses.phrase(status), status, detail, errors);
    }
}
