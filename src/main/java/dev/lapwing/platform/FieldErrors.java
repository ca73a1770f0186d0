package dev.lapwing.platform;

import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Collects what is wrong with a request, so that all of it is said at once. */
public final class FieldErrors {
    private final List<FieldError> errors = new ArrayList<>();

    /** Notes an error when the condition does not hold; returns whether it held. */
    public boolean check(boolean holds, String field, String message) {
        if (!holds) {
            errors.add(new FieldError(field, message));
        }
        return holds;
    }

    /** Notes an error when the value is null or blank; returns whether it is there. */
    public boolean present(Object value, String field) {
        return check(value != null && !(value instanceof String text && text.isBlank()), field, "is required");
    }

    /** Notes an error when the text is longer than {@code most} characters. A null is not too long. */
    public boolean atMost(String text, int most, String field) {
        return check(text == null || text.length() <= most, field, "is longer than " + most + " characters");
    }

    /**
     * Reads an optional word; a wrong one is noted and read as absent.
     *
     * @return the constant, or empty when the word is null, blank or wrong
     */
    public <E extends Enum<E> & Worded> Optional<E> word(Class<E> type, String word, String field) {
        if (word == null || word.isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Words.parse(type, word));
        } catch (IllegalArgumentException e) {
            errors.add(new FieldError(field, e.getMessage()));
            return Optional.empty();
        }
    }

    /**
     * Reads an optional field; what cannot be read is noted and read as absent.
     *
     * @param reading throws one of the exceptions of dates and numbers when the text is none
     * @return the value, or null when the text is null, blank or wrong
     */
    public <T> T read(String text, Function<String, T> reading, String field, String message) {
        if (text == null || text.isBlank()) {
            return null;
        }
        try {
            return reading.apply(text);
        } catch (DateTimeException | NumberFormatException unreadable) {
            errors.add(new FieldError(field, message));
            return null;
        }
    }

    public List<FieldError> list() {
        return List.copyOf(errors);
    }

    /** Refuses the request if anything was noted. */
    public void refuseIfAny() {
        if (!errors.isEmpty()) {
            throw Refused.invalid(errors);
        }
    }
}
