package dev.lapwing.platform;

import java.util.List;

/** A request that the service understood and refuses. The edge turns it into a problem answer or a page. */
public final class Refused extends RuntimeException {
    /** Why a request is refused. */
    public enum Kind {
        INVALID,
        FORBIDDEN,
        NOT_FOUND,
        CONFLICT,
        TOO_LARGE,
        UNSUPPORTED,
        KEY_REUSED,
        BUSY
    }

    private static final long serialVersionUID = 1L;
    private final Kind kind;
    private final transient List<FieldError> errors;

    private Refused(Kind kind, String message, List<FieldError> errors) {
        super(message);
        this.kind = kind;
        this.errors = List.copyOf(errors);
    }

    /** The input is wrong in the named fields. */
    public static Refused invalid(List<FieldError> errors) {
        return new Refused(Kind.INVALID, errors.size() == 1 ? "One field is wrong" : "Some fields are wrong", errors);
    }

    /** Files are larger than what is taken. */
    public static Refused tooLarge(List<FieldError> errors) {
        return new Refused(Kind.TOO_LARGE, "A file is larger than what is taken", errors);
    }

    /** Files are of a kind that is not taken. */
    public static Refused unsupported(List<FieldError> errors) {
        return new Refused(Kind.UNSUPPORTED, "A file is of a kind that is not taken", errors);
    }

    /** The service has too much to do at the moment; the same request may be sent again. */
    public static Refused busy(String message) {
        return new Refused(Kind.BUSY, message, List.of());
    }

    /** The input is wrong in one field. */
    public static Refused invalid(String field, String message) {
        return invalid(List.of(new FieldError(field, message)));
    }

    /** There is no such thing; {@code what} reads like "task 7". */
    public static Refused notFound(String what) {
        return new Refused(Kind.NOT_FOUND, "There is no " + what, List.of());
    }

    /** The state of the thing does not allow it. */
    public static Refused conflict(String message) {
        return new Refused(Kind.CONFLICT, message, List.of());
    }

    /** The person may not do this. */
    public static Refused forbidden(String message) {
        return new Refused(Kind.FORBIDDEN, message, List.of());
    }

    /** An idempotency key came again with another request. */
    public static Refused keyReused() {
        return new Refused(Kind.KEY_REUSED, "This Idempotency-Key was used before with another request", List.of());
    }

    public Kind kind() {
        return kind;
    }

    public List<FieldError> errors() {
        return errors;
    }
}
