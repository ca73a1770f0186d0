package dev.lapwing.jobs.domain.verdict;

import dev.lapwing.jobs.domain.FieldError;
import java.util.List;
import java.util.stream.Collectors;

/** Says which settings of the rule table cannot be used, and why. */
public final class RefusedSettings extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient List<FieldError> errors;

    RefusedSettings(List<FieldError> errors) {
        super(errors.stream().map(e -> e.field() + ": " + e.message()).collect(Collectors.joining("; ")));
        this.errors = List.copyOf(errors);
    }

    /** Returns every refused setting. */
    public List<FieldError> errors() {
        return errors;
    }
}
